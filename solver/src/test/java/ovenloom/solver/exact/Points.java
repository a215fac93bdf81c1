package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Wish;

/** The points of each wish, where less is better. */
final class Points {

  private static final int MOST = 1_000_000;
  private static final int DAY = 1440;

  private final Cp cp;
  private final Steps steps;
  private final Waits waits;
  private final Map<Wish, LinearArgument> byWish = new EnumMap<>(Wish.class);

  /** Of all that has to do with food and vessels alone: what {@link Bustle} counts is left at 0. */
  Points(Cp cp, Steps steps, Waits waits, List<Bake> bakes, Heat heat, List<WashUp> washes) {
    this.cp = cp;
    this.steps = steps;
    this.waits = waits;
    if (cp.from() < 0 || cp.to() > DAY) {
      throw new UnsupportedOperationException("other days");
    }
    for (Wish wish : Wish.values()) {
      byWish.put(wish, LinearExpr.constant(0));
    }
    byWish.put(Wish.FRESHNESS, freshness());
    byWish.put(Wish.SETTING, LinearExpr.newBuilder().add(setting(bakes)).add(heat.overcooked()).build());
    byWish.put(Wish.SESSIONS, Cp.sum(washes.stream().map(WashUp::isDone).toList()));
  }

  void add(Bustle bustle) {
    byWish.put(Wish.CALM, bustle.calm());
    byWish.put(Wish.DIAL, bustle.dial());
    byWish.put(Wish.ENERGY, bustle.energy());
  }

  Map<Wish, LinearArgument> byWish() {
    return byWish;
  }

  LinearArgument sum() {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    byWish.forEach((wish, points) -> sum.addTerm(points, steps.event().wishes().weight(wish)));
    return sum.build();
  }

  private LinearArgument freshness() {
    List<LinearArgument> all = new ArrayList<>();
    for (Dish dish : steps.event().dishes()) {
      for (int batch = 1; batch <= dish.batches(); batch++) {
        all.add(freshness(dish, batch));
      }
    }
    return Cp.sum(all);
  }

  /** A point for 10 minutes off a cold shelf beyond what it is best for, or for 6 hours on one. */
  private LinearArgument freshness(Dish dish, int batch) {
    LinearExprBuilder off = LinearExpr.newBuilder().add(-dish.isBestFor());
    LinearExprBuilder cold = LinearExpr.newBuilder();
    for (Wait wait : waits.all()) {
      if (wait.step().dish().equals(dish) && wait.step().batches().first() == batch) {
        LinearArgument inTheCold = cold(wait);
        off.add(wait.to()).addTerm(wait.from(), -1).addTerm(inTheCold, -1);
        cold.add(inTheCold);
      }
    }
    IntVar beyond = cp.number(0, MOST, "beyond its best");
    cp.atMost(off, beyond);
    return cp.floored(LinearExpr.newBuilder().addTerm(beyond, 36).add(cold).build(), 360, MOST, "freshness");
  }

  private LinearArgument cold(Wait wait) {
    if (wait.cold().isEmpty()) {
      return LinearExpr.constant(0);
    }
    Literal isCold = cp.any(wait.cold());
    IntVar cold = cp.number(0, cp.to() - cp.from(), "in the cold");
    cp.equal(cold, Cp.minus(wait.back(), wait.aside()), isCold);
    cp.equal(cold, LinearExpr.constant(0), isCold.not());
    return cold;
  }

  private LinearArgument setting(List<Bake> bakes) {
    List<LinearArgument> all = new ArrayList<>();
    for (Bake bake : bakes) {
      LinearExprBuilder points = LinearExpr.newBuilder();
      bake.ways().forEach(way -> points.addTerm(way.taken(), way.tenths() / 50));
      all.add(points.build());
    }
    return Cp.sum(all);
  }
}
