package ovenloom.model.watch;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Reach;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Perishable;

/** The ways that food goes from step to step, as far as its menu tells. */
final class Ways {

  /** Of more ways to one step not all are followed in a plan. */
  private static final int FOLLOWED = 24;

  private final Work work;
  private final Reach reach;
  private final Map<Integer, Set<Integer>> before = new HashMap<>();
  private final Map<Integer, Set<Integer>> after = new HashMap<>();
  private final Map<Integer, Integer> counts = new HashMap<>();

  Ways(Work work, Reach reach) {
    this.work = work;
    this.reach = reach;
  }

  Event event() {
    return work.event();
  }

  /** The steps whose food goes straight into a step. */
  List<BatchStep> feeders(BatchStep step) {
    return work.into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> work.steps().get(link.from()))
        .filter(each -> each.dish().food())
        .toList();
  }

  /** A step, and all whose food gets into it. */
  Stream<BatchStep> upTo(BatchStep step) {
    Set<Integer> known = before.get(step.index());
    if (known == null) {
      known = new TreeSet<>(Set.of(step.index()));
      for (BatchStep each : feeders(step)) {
        known.addAll(upTo(each).map(BatchStep::index).toList());
      }
      before.put(step.index(), known);
    }
    return known.stream().map(work.steps()::get);
  }

  /** A step, and all that its food gets into. */
  Stream<BatchStep> from(BatchStep step) {
    Set<Integer> known = after.get(step.index());
    if (known == null) {
      known = new TreeSet<>(Set.of(step.index()));
      for (BatchLink link : work.outOf(step.index())) {
        BatchStep next = work.steps().get(link.to());
        if (link.carriesFood() && next.dish().food()) {
          known.addAll(from(next).map(BatchStep::index).toList());
        }
      }
      after.put(step.index(), known);
    }
    return known.stream().map(work.steps()::get);
  }

  /** Whether every way through a step is followed in every plan, from end to end: no ice, nothing that joins alongside, not too many. */
  boolean areFollowed(BatchStep step) {
    return from(step).allMatch(each -> count(each) <= FOLLOWED && upTo(each).noneMatch(this::isLost));
  }

  private int count(BatchStep step) {
    Integer known = counts.get(step.index());
    if (known == null) {
      int sum = feeders(step).stream().mapToInt(this::count).sum();
      known = Math.clamp(sum, 1, FOLLOWED + 1);
      counts.put(step.index(), known);
    }
    return known;
  }

  private boolean isLost(BatchStep step) {
    return mayFreeze(step) || work.event().kitchen().room().inCelsius() < 0
        || work.into(step.index()).stream().anyMatch(link -> link.link().kind() == Link.Kind.ALONGSIDE);
  }

  /** Whether its food may turn to ice. */
  boolean mayFreeze(BatchStep step) {
    return step.step().starts() == StartState.FROZEN
        || Stream.concat(reach.shelves(step).stream(), reach.keeping(step).stream())
            .anyMatch(store -> store.kind() == Store.Kind.FREEZER || store.holds().inCelsius() < 0);
  }

  /** The steps that a step's food is eaten from. */
  Stream<BatchStep> eaten(BatchStep step) {
    return from(step).filter(each -> work.goesToTheTable(each.index()));
  }

  /** Whether a step's food must be kept hot or cold from its beginning on, since it is eaten as one dish or another. */
  boolean isPerishable(BatchStep step) {
    return eaten(step).anyMatch(each -> isPerishable(step, each.dish()));
  }

  /** The same as a part of a certain dish. */
  boolean isPerishable(BatchStep step, Dish eaten) {
    Predicate<BatchStep> fromTheStart = each -> Perishable.isFromTheStart(each.dish().tags());
    return !Perishable.isNever(eaten.tags())
        && (Perishable.isFromTheStart(eaten.tags()) || upTo(step).anyMatch(fromTheStart)
            || (Perishable.isOnceCooked(eaten.matter().kind()) && upTo(step).anyMatch(reach::heats)));
  }
}
