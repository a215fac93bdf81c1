package ovenloom.model.audit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;

/** A plan under audit, beside the work it is a plan for. */
public record Case(Event event, Work work, Plan plan) {

  static Case of(Event event, Plan plan) {
    return new Case(event, Work.of(event), plan);
  }

  /** The run that does a step; absent where the plan forgot it. */
  @Nullable
  Placement run(BatchStep step) {
    return plan.placements()
        .stream()
        .filter(run -> run.dish().equals(step.dish().name()) && run.step().equals(step.step().name()))
        .filter(run -> run.batches().holds(step.batches()))
        .findFirst()
        .orElse(null);
  }

  /** The run that does a step by its index in the work. */
  @Nullable
  Placement run(int step) {
    return run(work.steps().get(step));
  }

  /** The steps a run does, in the order of their batches; none where the menu has no such step. */
  List<BatchStep> steps(Placement run) {
    return work.steps()
        .stream()
        .filter(step -> run.dish().equals(step.dish().name()) && run.step().equals(step.step().name()))
        .filter(step -> run.batches().holds(step.batches()))
        .toList();
  }

  /** Where a step's food waits; absent where the plan has no stay for it. */
  @Nullable
  Stay stay(BatchStep step) {
    return plan.stays()
        .stream()
        .filter(stay -> stay.dish().equals(step.dish().name()) && stay.step().equals(step.step().name()))
        .filter(stay -> stay.batches().holds(step.batches()))
        .findFirst()
        .orElse(null);
  }
}
