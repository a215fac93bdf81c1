package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;

/** Food that waits does so in one of a few ways, and no longer than it keeps there. */
final class Waits {

  private final Cp cp;
  private final Steps steps;
  private final Map<Integer, Wait> waits = new HashMap<>();

  Waits(Cp cp, Steps steps) {
    this.cp = cp;
    this.steps = steps;
    for (BatchStep step : steps.all()) {
      if (steps.work().leavesAStay(step.index())) {
        add(step);
      }
    }
  }

  /** That of a step, or null where nothing of it waits. */
  @Nullable
  Wait of(int step) {
    return waits.get(step);
  }

  List<Wait> all() {
    return List.copyOf(waits.values());
  }

  private void add(BatchStep step) {
    Keeps keeps = step.step().keeps() == null ? Keeps.HARDLY : step.step().keeps();
    LinearArgument from = steps.end(step.index());
    LinearArgument to = taken(step);
    Map<String, Literal> stores = new TreeMap<>();
    List<Literal> cold = new ArrayList<>();
    for (Store store : steps.event().kitchen().stores()) {
      if (keeps.stores().getOrDefault(store.name(), 0) > 0) {
        BoolVar there = cp.choice(step + " in " + store.name());
        stores.put(store.name(), there);
        if (store.kind().isCold()) {
          cold.add(there);
        }
      }
    }
    boolean onBurner = step.step().burner() != null && positive(keeps.burner());
    boolean inOven = step.step().bake() != null && positive(keeps.oven());
    List<Literal> burner = onBurner ? List.of(cp.choice(step + " on burner")) : List.of();
    List<Literal> hold = inOven ? List.of(cp.choice(step + " at hold")) : List.of();
    List<Literal> off = inOven ? List.of(cp.choice(step + " in oven, off")) : List.of();
    List<Literal> ways = new ArrayList<>(stores.values());
    ways.addAll(burner);
    ways.addAll(hold);
    ways.addAll(off);
    LinearArgument aside = ways.isEmpty() ? to : cp.minute("aside");
    LinearArgument back = ways.isEmpty() ? to : cp.minute("back");
    Wait wait = new Wait(step, from, aside, back, to, stores, cold, burner, hold, off);
    waits.put(step.index(), wait);
    if (!ways.isEmpty()) {
      inOneWay(wait, ways);
    }
    keep(wait, keeps);
  }

  private static boolean positive(@Nullable Integer minutes) {
    return minutes != null && minutes > 0;
  }

  /** When the last of it is taken. */
  private LinearArgument taken(BatchStep step) {
    if (steps.work().goesToTheTable(step.index())) {
      if (step.batches().count() > 1) {
        throw new UnsupportedOperationException("batches that go to the table as one");
      }
      return LinearExpr.constant(steps.due(step));
    }
    List<IntVar> takers = steps.work()
        .outOf(step.index())
        .stream()
        .filter(BatchLink::makesAStay)
        .map(link -> steps.start(link.to()))
        .toList();
    return cp.latest(takers, "last of " + step);
  }

  private void inOneWay(Wait wait, List<Literal> ways) {
    BoolVar counter = cp.choice("on the counter only");
    List<Literal> all = new ArrayList<>(ways);
    all.add(counter);
    cp.model().addExactlyOne(all);
    cp.atMost(wait.from(), wait.aside());
    cp.atMost(wait.aside(), wait.back());
    cp.atMost(wait.back(), wait.to());
    cp.equal(wait.aside(), wait.to(), counter);
    for (Literal way : ways) {
      cp.atMost(Cp.plus(wait.aside(), 1), wait.back(), way);
      if (!wait.cold().contains(way)) {
        cp.equal(wait.from(), wait.aside(), way);
        cp.equal(wait.back(), wait.to(), way);
      }
    }
  }

  private void keep(Wait wait, Keeps keeps) {
    int counter = keeps.counter() == null ? 0 : keeps.counter();
    if (steps.work().goesToTheTable(wait.step().index())) {
      keep(wait, keeps, wait.to(), counter, true);
      return;
    }
    List<BatchLink> takers = steps.work()
        .outOf(wait.step().index())
        .stream()
        .filter(BatchLink::makesAStay)
        .toList();
    for (BatchLink link : takers) {
      Integer most = link.link().most();
      keep(wait, keeps, steps.start(link.to()), most == null ? counter : most, takers.size() == 1);
    }
  }

  /** The counter beyond its free minutes and the other place, each against its limit, are no more than one together. */
  private void keep(Wait wait, Keeps keeps, LinearArgument taken, int counter, boolean isLast) {
    LinearArgument aside = isLast ? wait.aside() : earlier(wait.aside(), taken);
    LinearArgument back = isLast ? wait.back() : earlier(wait.back(), taken);
    LinearExpr away = Cp.minus(back, aside);
    LinearExpr standing = LinearExpr.newBuilder()
        .add(taken)
        .addTerm(wait.from(), -1)
        .addTerm(away, -1)
        .build();
    IntVar beyond = cp.number(0, counter, "beyond");
    cp.atMost(Cp.plus(standing, -Keeps.FREE_ON_THE_COUNTER), beyond);
    wait.stores()
        .forEach((name, there) -> share(there, away, keeps.stores().getOrDefault(name, 0), beyond, counter));
    wait.burner().forEach(there -> share(there, away, limit(keeps.burner()), beyond, counter));
    wait.oven().forEach(there -> share(there, away, limit(keeps.oven()), beyond, counter));
  }

  private static int limit(@Nullable Integer minutes) {
    return minutes == null ? 0 : minutes;
  }

  private LinearArgument earlier(LinearArgument one, LinearArgument other) {
    IntVar earlier = cp.minute("earlier");
    cp.model().addMinEquality(earlier, new LinearArgument[]{one, other});
    return earlier;
  }

  private void share(Literal there, LinearExpr away, int limit, IntVar beyond, int counter) {
    if (counter == 0) {
      cp.atMost(away, limit, there);
      return;
    }
    LinearExpr shares = LinearExpr.newBuilder().addTerm(beyond, limit).addTerm(away, counter).build();
    cp.atMost(shares, (long) limit * counter, there);
  }
}
