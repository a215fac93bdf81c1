package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;

/** No food waits longer than it keeps where it is. */
record Keeping() implements KitchenRule {

  @Override
  public String id() {
    return "keeps";
  }

  @Override
  public String sentence() {
    return "No food waits longer than it keeps where it is.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (BatchLink link : plan.work().links()) {
      Placement taker = plan.run(link.to());
      if (link.makesAStay() && taker != null) {
        check(plan, plan.work().steps().get(link.from()), plan.name(taker), taker.when().from(),
            link.link().most(),
            breaks);
      }
    }
    for (BatchStep step : plan.work().steps()) {
      if (plan.work().goesToTheTable(step.index()) && plan.work().leavesAStay(step.index())) {
        check(plan, step, "the table", plan.event().due(step.dish(), step.batches().first()), null, breaks);
      }
    }
    return breaks.stream().distinct().toList();
  }

  private void check(
      Case plan, BatchStep step, String taker, int until, @Nullable Integer most, List<Break> breaks) {
    Placement run = plan.run(step);
    Stay stay = plan.stay(step);
    if (run == null || stay == null || until <= run.when().to()) {
      return;
    }
    Stretch gap = new Stretch(run.when().to(), until);
    List<Spent> spent = Spent.in(stay, gap, step.step().keeps(), most);
    int over = Spent.over(spent);
    if (over > 0) {
      String what = String.join(", ", spent.stream().map(Spent::toString).toList());
      breaks.add(Break.of(this, List.of(plan.name(run), taker), gap, over, Break.Unit.MINUTES, what));
    }
  }
}
