package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;

/**
 * Food that has to wait somewhere, by the runs of the plan.
 *
 * @param run after which it waits
 * @param steps of the run, those whose food waits together
 * @param when from the run's end until the last of it is taken or due; empty where it is taken at once
 */
public record Wait(Placement run, List<BatchStep> steps, Stretch when) {

  public Wait {
    steps = List.copyOf(steps);
  }

  /** All of a plan. */
  public static List<Wait> all(Case plan) {
    List<Wait> waits = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      for (List<BatchStep> together : inOneVessel(plan.steps(run))) {
        if (together.stream().anyMatch(step -> plan.work().leavesAStay(step.index()))) {
          waits.add(new Wait(run, together, when(plan, run, together)));
        }
      }
    }
    return waits;
  }

  private static List<List<BatchStep>> inOneVessel(List<BatchStep> steps) {
    if (!steps.isEmpty() && steps.getFirst().step().together().oneVessel()) {
      return List.of(steps);
    }
    return steps.stream().map(List::of).toList();
  }

  private static Stretch when(Case plan, Placement run, List<BatchStep> steps) {
    int from = run.when().to();
    int until = steps.stream().mapToInt(step -> until(plan, step, from)).max().orElse(from);
    return new Stretch(from, Math.max(from, until));
  }

  private static int until(Case plan, BatchStep step, int from) {
    if (plan.work().goesToTheTable(step.index())) {
      return plan.event().due(step.dish(), step.batches().first());
    }
    int last = from;
    for (BatchLink link : plan.work().outOf(step.index())) {
      Placement taker = plan.run(link.to());
      if (link.makesAStay() && taker != null) {
        last = Math.max(last, taker.when().from());
      }
    }
    return last;
  }

  /** The batches its stay names. */
  public Batches batches() {
    return new Batches(steps.getFirst().batches().first(), steps.getLast().batches().last());
  }

  /** Whether a stay is where this food waits. */
  public boolean isThatOf(Stay stay) {
    return stay.dish().equals(run.dish()) && stay.step().equals(run.step())
        && stay.batches().equals(batches());
  }
}
