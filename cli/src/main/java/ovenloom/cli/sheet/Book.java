package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;

/** A plan, opened where a step is looked up: which run does it, what came before, what comes after. */
record Book(Plan plan, Work work) {

  static Book of(Plan plan) {
    return new Book(plan, Work.of(plan.event()));
  }

  Event event() {
    return plan.event();
  }

  /** The steps a run does, in the order of their batches. */
  List<BatchStep> steps(Placement run) {
    return work.steps()
        .stream()
        .filter(step -> step.dish().name().equals(run.dish()) && step.step().name().equals(run.step()))
        .filter(step -> run.batches().holds(step.batches()))
        .toList();
  }

  boolean isInIce(Placement run) {
    return run.shelves()
        .stream()
        .map(place -> event().kitchen().store(place.store()))
        .anyMatch(store -> store != null && store.kind() == Store.Kind.ICE_BATH);
  }

  Placement run(BatchStep step) {
    return plan.placement(step.dish().name(), step.step().name(), step.batches().first());
  }

  @Nullable
  Stay stay(BatchStep step) {
    return plan.stays()
        .stream()
        .filter(stay -> stay.dish().equals(step.dish().name()) && stay.step().equals(step.step().name()))
        .filter(stay -> stay.batches().holds(step.batches()))
        .findFirst()
        .orElse(null);
  }

  /** The steps whose food goes into a step and was somewhere before. */
  List<BatchStep> feeding(BatchStep step) {
    List<BatchStep> all = new ArrayList<>();
    for (BatchLink link : work.into(step.index())) {
      BatchStep earlier = work.steps().get(link.from());
      if (link.makesAStay() && earlier.dish().food()) {
        all.add(earlier);
      }
    }
    return all;
  }

  /** The steps that take a step's food after it. */
  List<BatchStep> fedBy(BatchStep step) {
    return work.outOf(step.index())
        .stream()
        .filter(link -> link.makesAStay() && step.dish().food())
        .map(link -> work.steps().get(link.to()))
        .toList();
  }
}
