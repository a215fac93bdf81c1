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
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Course;
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

  Points(Cp cp, Steps steps, Waits waits, List<Bake> bakes, List<OvenLine> ovens, Stove stove, Crew crew,
      List<WashUp> washes, Heat heat) {
    this.cp = cp;
    this.steps = steps;
    this.waits = waits;
    if (cp.from() < 0 || cp.to() > DAY) {
      throw new UnsupportedOperationException("other days");
    }
    byWish.put(Wish.FRESHNESS, freshness());
    byWish.put(Wish.SETTING, LinearExpr.newBuilder().add(setting(bakes)).add(heat.overcooked()).build());
    byWish.put(Wish.CALM, calm(crew));
    byWish.put(Wish.DIAL, dial(ovens));
    byWish.put(Wish.ENERGY, energy(ovens, stove));
    byWish.put(Wish.SESSIONS, Cp.sum(washes.stream().map(WashUp::isDone).toList()));
    byWish.put(Wish.STEADY, LinearExpr.constant(0));
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

  private LinearArgument calm(Crew crew) {
    LinearExprBuilder calm = LinearExpr.newBuilder();
    for (int minute = cp.from(); minute < cp.to(); minute++) {
      if (before(60).contains(minute)) {
        for (Cook cook : steps.event().cooks()) {
          calm.add(crew.busy(cook, minute));
        }
      }
      if (before(120).contains(minute)) {
        calm.addTerm(noHandIsFree(crew, minute), 2);
      }
    }
    return calm.add(cp.floored(crew.minutes(), 20, MOST, "work on the day")).build();
  }

  private Stretches before(int minutes) {
    List<Stretch> before = new ArrayList<>();
    for (Course course : steps.event().courses()) {
      if (steps.event().dishes().stream().anyMatch(dish -> dish.course().equals(course.name()))) {
        before.add(new Stretch(course.at() - minutes, course.at()));
      }
    }
    return new Stretches(before);
  }

  private LinearArgument noHandIsFree(Crew crew, int minute) {
    LinearExprBuilder busy = LinearExpr.newBuilder();
    int there = 0;
    for (Cook cook : steps.event().cooks()) {
      if (new Stretches(cook.hours()).without(new Stretches(cook.breaks())).contains(minute)) {
        busy.add(crew.busy(cook, minute));
        there++;
      }
    }
    if (there == 0) {
      return LinearExpr.constant(0);
    }
    IntVar none = cp.number(0, 1, "no hand is free");
    cp.atMost(busy.add(1 - there), none);
    return none;
  }

  private LinearArgument dial(List<OvenLine> ovens) {
    LinearExprBuilder turns = LinearExpr.newBuilder();
    ovens.forEach(oven -> oven.gaps().forEach(gap -> turns.addTerm(gap.turned(), 5)));
    return turns.build();
  }

  private LinearArgument energy(List<OvenLine> ovens, Stove stove) {
    int unit = 100;
    LinearExprBuilder energy = LinearExpr.newBuilder();
    for (OvenLine line : ovens) {
      Oven oven = line.dial().oven();
      line.dial()
          .blocks()
          .forEach(
              block -> energy.addTerm(Cp.minus(block.to(), block.from()), oven.holding().watts() / unit));
      line.gaps().forEach(gap -> energy.add(gap.energy(unit)));
      energy.addTerm(line.firstPreheat(), oven.heating().watts() / unit);
    }
    List<Integer> powers = steps.event()
        .kitchen()
        .burners()
        .stream()
        .map(Burner::power)
        .map(power -> power.watts())
        .distinct()
        .toList();
    if (powers.size() > 1) {
      throw new UnsupportedOperationException("burners of different power");
    }
    stove.minutes().forEach(minutes -> energy.addTerm(minutes, powers.getFirst() / unit));
    return cp.floored(energy.build(), 6000 / unit, MOST, "energy");
  }
}
