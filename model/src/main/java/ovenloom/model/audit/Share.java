package ovenloom.model.audit;

import java.util.List;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.Placement;

/** What a batch has of a list that a run keeps batch by batch, one entry a vessel. */
final class Share {

  private Share() {}

  /** All of the list where batches share it: one vessel, no vessels, or as many as nobody can tell apart. */
  static <T> List<T> of(Case plan, Placement run, BatchStep step, List<T> all) {
    List<BatchStep> steps = plan.steps(run);
    int pieces = steps.stream().mapToInt(each -> pieces(plan, each)).sum();
    if (step.step().together().oneVessel() || pieces != all.size()) {
      return all;
    }
    int before = steps.stream()
        .takeWhile(each -> !each.equals(step))
        .mapToInt(each -> pieces(plan, each))
        .sum();
    return all.subList(before, before + pieces(plan, step));
  }

  private static int pieces(Case plan, BatchStep step) {
    return plan.work().fillingsOf(step.index()).stream().mapToInt(Filling::count).sum();
  }
}
