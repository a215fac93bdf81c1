package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.Placement;

/** Everything on the menu is done, once, and for as long as it takes. */
record EverythingOnce() implements KitchenRule {

  @Override
  public String id() {
    return "everything once";
  }

  @Override
  public String sentence() {
    return "Everything on the menu is done, once, and for as long as it takes.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    plan.work().steps().forEach(step -> count(plan, step, breaks));
    for (Placement run : plan.plan().placements()) {
      List<BatchStep> steps = plan.steps(run);
      if (steps.isEmpty()) {
        breaks.add(times(plan, run, 1, "the menu asks for nothing of the kind"));
      } else {
        batches(plan, run, steps.getFirst(), breaks);
        minutes(plan, run, steps.getFirst(), breaks);
      }
    }
    return breaks;
  }

  private void count(Case plan, BatchStep step, List<Break> breaks) {
    int runs = plan.runs(step).size();
    if (runs != 1) {
      String what = runs == 0 ? "it is never done" : "it is done " + runs + " times";
      breaks.add(Break.of(this, List.of(step.toString()), null, Math.abs(runs - 1), Break.Unit.TIMES, what));
    }
  }

  private void batches(Case plan, Placement run, BatchStep step, List<Break> breaks) {
    Batches batches = run.batches();
    int unknown = batches.last() - step.dish().batches();
    if (unknown > 0) {
      breaks.add(times(plan, run, unknown,
          "there are " + step.dish().batches() + " batches, not " + batches.last()));
    }
    int most = atOnce(step.step(), batches);
    if (batches.count() > most) {
      String what = batches.count() + " batches share a run, and at most " + most + " may";
      breaks.add(times(plan, run, batches.count() - most, what));
    }
  }

  private static int atOnce(Step step, Batches batches) {
    return step.once() ? batches.count() : step.together().most();
  }

  /** How long a bake is depends on its heat, and is another rule's. */
  private void minutes(Case plan, Placement run, BatchStep step, List<Break> breaks) {
    if (step.step().bake() != null) {
      return;
    }
    int booked = run.when().minutes();
    int off = Math.max(step.minutes() - booked, booked - step.mostMinutes());
    if (off > 0) {
      String may = step.minutes() == step.mostMinutes() ? "it takes " + step.minutes()
          : "it takes " + step.minutes() + " to " + step.mostMinutes();
      String what = may + " min and has " + booked;
      breaks.add(Break.of(this, List.of(plan.name(run)), run.when(), off, Break.Unit.MINUTES, what));
    }
  }

  private Break times(Case plan, Placement run, int off, String what) {
    return Break.of(this, List.of(plan.name(run)), run.when(), off, Break.Unit.TIMES, what);
  }
}
