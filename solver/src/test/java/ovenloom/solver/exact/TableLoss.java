package ovenloom.solver.exact;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.life.Warmness;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Keeps;

/** What hot dishes lose from their last heat to the table, where less is better. */
final class TableLoss {

  private final Cp cp;
  private final Steps steps;
  private final Waits waits;
  private final Warmness warmness;
  private final Map<String, LinearArgument> byDish = new TreeMap<>();

  TableLoss(Cp cp, Steps steps, Waits waits) {
    this.cp = cp;
    this.steps = steps;
    this.waits = waits;
    warmness = new Warmness(steps.work());
    for (Dish dish : steps.event().dishes()) {
      if (dish.food() && !Warmness.isWarm(dish)) {
        throw new UnsupportedOperationException("dishes that are to be cool");
      }
      if (Warmness.isWarm(dish)) {
        LinearExprBuilder lost = LinearExpr.newBuilder();
        for (int batch = 1; batch <= dish.batches(); batch++) {
          lost.addTerm(lost(dish, batch), dish.portionsInABatch());
        }
        byDish.put(dish.name(), lost.build());
      }
    }
  }

  Map<String, LinearArgument> byDish() {
    return byDish;
  }

  private LinearArgument lost(Dish dish, int batch) {
    List<BatchStep> ours = steps.all()
        .stream()
        .filter(step -> step.dish().equals(dish) && step.batches().holds(batch))
        .toList();
    List<BatchStep> hot = ours.stream().filter(step -> step.step().cooks()).toList();
    if (hot.isEmpty()) {
      return LinearExpr.constant(0);
    }
    BatchStep last = hot.getLast();
    for (BatchStep other : hot) {
      if (!other.equals(last) && !leadsTo(other, last)) {
        throw new UnsupportedOperationException("two last steps on the heat");
      }
    }
    LinearArgument served = served(dish, batch, ours);
    LinearExprBuilder minutes = LinearExpr.newBuilder()
        .add(served)
        .addTerm(steps.end(last.index()), -1);
    BatchStep step = last;
    BatchStep end = last;
    int most = 0;
    while (step != null) {
      BatchStep next = next(step, ours);
      end = step;
      most += longest(step) + (next == null ? 0 : next.mostMinutes() - next.minutes());
      minutes.addTerm(keptHot(step, next == null ? served : steps.start(next.index())), -1);
      minutes.add(next == null ? 0 : -next.minutes());
      step = next;
    }
    most = isTakenWhenServed(end, ours) ? Math.min(most, cp.to() - cp.from()) : cp.to() - cp.from();
    IntVar waited = cp.number(0, most, "waited by " + dish.name());
    cp.atMost(minutes, waited);
    long[] tenths = LongStream.rangeClosed(0, most)
        .map(each -> warmness.tenthsShort(last.index(), each))
        .toArray();
    IntVar lost = cp.number(0, tenths[most], "lost by " + dish.name());
    cp.model().addElement(waited, tenths, lost);
    return lost;
  }

  /** Whether the wait of a step is over when its dish is served; it may go into another dish, or wait for others of its own. */
  private boolean isTakenWhenServed(BatchStep end, List<BatchStep> ours) {
    boolean isPlated = ours.stream().anyMatch(step -> step.step().serve());
    return isPlated ? steps.work()
        .outOf(end.index())
        .stream()
        .anyMatch(link -> link.makesAStay() && steps.all().get(link.to()).step().serve())
        : steps.work().goesToTheTable(end.index());
  }

  /** Minutes that it waits, by its own limits. */
  private int longest(BatchStep step) {
    Keeps keeps = step.step().keeps() == null ? Keeps.HARDLY : step.step().keeps();
    IntStream links = steps.work()
        .outOf(step.index())
        .stream()
        .map(link -> link.link().most())
        .filter(Objects::nonNull)
        .mapToInt(Integer::intValue);
    IntStream places = Stream
        .concat(keeps.stores().values().stream(), Stream.of(keeps.burner(), keeps.oven()))
        .filter(Objects::nonNull)
        .mapToInt(Integer::intValue);
    int counter = keeps.counter() == null ? 0 : keeps.counter();
    return Keeps.FREE_ON_THE_COUNTER + Math.max(counter, links.max().orElse(0)) + places.max().orElse(0);
  }

  private boolean leadsTo(BatchStep one, BatchStep other) {
    return one.equals(other)
        || steps.work()
            .outOf(one.index())
            .stream()
            .anyMatch(link -> leadsTo(steps.all().get(link.to()), other));
  }

  private LinearArgument served(Dish dish, int batch, List<BatchStep> ours) {
    List<BatchStep> serving = ours.stream().filter(step -> step.step().serve()).toList();
    if (serving.size() > 1) {
      throw new UnsupportedOperationException("two serving steps");
    }
    return serving.isEmpty() ? LinearExpr.constant(steps.event().due(dish, batch))
        : steps.start(serving.getFirst().index());
  }

  private @Nullable BatchStep next(BatchStep step, List<BatchStep> ours) {
    for (BatchLink link : steps.work().outOf(step.index())) {
      BatchStep to = steps.all().get(link.to());
      if (link.makesAStay() && ours.contains(to)) {
        return to.step().serve() ? null : to;
      }
    }
    return null;
  }

  /** Minutes in a place that keeps it hot, until it is taken; the more, the better. */
  private LinearArgument keptHot(BatchStep step, LinearArgument until) {
    Wait wait = waits.of(step.index());
    if (wait == null || wait.hot().isEmpty()) {
      return LinearExpr.constant(0);
    }
    Literal isHot = cp.any(wait.hot());
    IntVar kept = cp.number(0, cp.to() - cp.from(), "kept hot");
    cp.atMost(kept, Cp.minus(until, wait.from()));
    cp.atMost(kept, 0, isHot.not());
    return kept;
  }
}
