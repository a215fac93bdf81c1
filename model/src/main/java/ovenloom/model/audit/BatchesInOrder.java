package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Placement;

/** Of each step, the first batch is done before the second. */
record BatchesInOrder() implements KitchenRule {

  @Override
  public String id() {
    return "batches in order";
  }

  @Override
  public String sentence() {
    return "Of each step, the first batch is done before the second.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (BatchStep step : plan.work().steps()) {
      if (step.batches().first() > 1) {
        check(plan, plan.work().find(step.dish().name(), step.step().name(), step.batches().first() - 1),
            step,
            breaks);
      }
    }
    return breaks;
  }

  private void check(Case plan, BatchStep one, BatchStep next, List<Break> breaks) {
    Placement first = plan.run(one);
    Placement second = plan.run(next);
    if (first == null || second == null || first.when().to() <= second.when().to()) {
      return;
    }
    Stretch between = new Stretch(second.when().to(), first.when().to());
    String what = next + " is done " + between.minutes() + " min before the batch that comes first";
    breaks.add(Break.of(this, List.of(one.toString(), next.toString()), between, between.minutes(),
        Break.Unit.MINUTES, what));
  }
}
