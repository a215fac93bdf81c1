package ovenloom.model.audit.score;

import java.util.List;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;

/** A bake is best no longer than its food needs, as warm as that goes in. */
final class Overcooked {

  private final Ledger plan;
  private final BakeMinutes minutes;
  private final double[] begins;

  Overcooked(Ledger plan) {
    this.plan = plan;
    minutes = new BakeMinutes(plan.cards());
    begins = new double[plan.work().steps().size()];
    new MeanWarmth(plan.cards()).follow(new PlanTimes(plan), begins);
  }

  static long points(Ledger plan) {
    Overcooked count = new Overcooked(plan);
    return plan.plan().placements().stream().mapToLong(count::points).sum();
  }

  long points(Placement run) {
    Baking baking = run.baking();
    Oven oven = baking == null ? null : plan.event().kitchen().oven(baking.oven());
    if (baking == null || oven == null) {
      return 0;
    }
    int least = plan.work()
        .steps()
        .stream()
        .filter(step -> run.equals(plan.run(step)))
        .mapToInt(step -> needed(step, baking, oven))
        .min()
        .orElse(BakeMinutes.NEVER);
    return BakeMinutes.points(run.when().minutes(), least);
  }

  private int needed(BatchStep step, Baking baking, Oven oven) {
    Need.Bake bake = step.step().bake();
    List<Setting> marks = baking.stages().stream().map(Baking.StageRun::mark).toList();
    return bake == null || bake.stages().size() != marks.size() ? BakeMinutes.NEVER
        : minutes.needed(step, oven, baking.mode(), marks, begins[step.index()]);
  }
}
