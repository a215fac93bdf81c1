package ovenloom.model.check;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;

/**
 * An event under check.
 *
 * @param laidOut its work; absent where it goes in a ring or is not known whole
 */
record Scene(Event event, @Nullable Work laidOut) {

  /** A step of a dish. */
  record Of(Dish dish, Step step) {
    Subject subject() {
      return Subject.step(dish.name(), step.name());
    }

    /** Written minutes of one run, the longest. */
    int minutes() {
      return step.takes().minutes(step.once() ? dish.servings().portions() : dish.portionsInABatch());
    }

    /** The most minutes a plan may book for one run. */
    int mostMinutes() {
      return step.takes().most(step.once() ? dish.servings().portions() : dish.portionsInABatch());
    }

    String called() {
      return dish.name() + "/" + step.name();
    }
  }

  Stream<Of> steps() {
    return event.dishes().stream().flatMap(dish -> dish.steps().stream().map(step -> new Of(dish, step)));
  }

  /** Only for checks that rely on the whole menu. */
  Work work() {
    return Objects.requireNonNull(laidOut, "work is laid out");
  }

  /** The steps of the work, one batch for each. */
  List<BatchStep> firstBatches() {
    return work().steps().stream().filter(step -> step.batches().first() == 1).toList();
  }

  static Subject subject(BatchStep step) {
    return Subject.step(step.dish().name(), step.step().name());
  }

  /** The vessels of a step that the kitchen has. */
  List<Vessel> vessels(BatchStep step) {
    return work().fillingsOf(step.index())
        .stream()
        .map(Filling::vessel)
        .distinct()
        .map(event.kitchen()::vessel)
        .filter(Objects::nonNull)
        .map(Objects::requireNonNull)
        .toList();
  }

  /** Whether no earlier batch may be in the same vessels: of batches that may share one, one of each full vessel. */
  boolean isByItself(Filling filling) {
    BatchStep first = work().steps().get(filling.first());
    Step.Together together = first.step().together();
    return !together.oneVessel() || (first.batches().first() - 1) % together.most() == 0;
  }

  /** When a dish's step may run: from the beginning of the calendar to when its last batch is due or served. */
  Stretch time(Dish dish, boolean serve) {
    int end = serve ? event.endOfService(dish) : event.due(dish, dish.batches());
    return new Stretch(event.from(), Math.max(event.from(), end));
  }
}
