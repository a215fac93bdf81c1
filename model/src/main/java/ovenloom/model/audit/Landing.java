package ovenloom.model.audit;

import java.util.List;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** Whatever stands on the worktop finds room there. */
record Landing() implements KitchenRule {

  @Override
  public String id() {
    return "landing";
  }

  @Override
  public String sentence() {
    return "Whatever stands on the worktop finds room there.";
  }

  @Override
  public List<Break> check(Case plan) {
    int room = plan.event().kitchen().landing();
    Counted worktop = new Counted(room);
    plan.plan().placements().forEach(run -> work(plan, run, worktop));
    plan.plan().stays().forEach(stay -> wait(plan, stay, worktop));
    return worktop.shortfalls()
        .stream()
        .map(each -> Break.of(this, each.who(), each.when(), each.by(), Break.Unit.PIECES,
            "the worktop holds " + room + " vessels, and lacks room for " + each.by()))
        .toList();
  }

  private static void work(Case plan, Placement run, Counted worktop) {
    List<BatchStep> steps = plan.steps(run);
    int pieces = Piece.of(plan, run).size();
    if (pieces > 0 && !steps.getFirst().step().hasAPlace()) {
      worktop.take(run.when(), pieces, plan.name(run));
    }
  }

  private static void wait(Case plan, Stay stay, Counted worktop) {
    int pieces = Piece.of(plan, stay).size();
    for (Stay.Part part : stay.parts()) {
      if (pieces > 0 && part.where() instanceof Where.Counter) {
        worktop.take(part.when(), pieces, plan.name(stay));
      }
    }
  }
}
