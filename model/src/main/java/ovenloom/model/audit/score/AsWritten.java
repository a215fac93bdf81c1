package ovenloom.model.audit.score;

import java.util.List;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;

/** A bake is best at the mark nearest to its written setting. */
final class AsWritten {

  private static final int TENTHS_OF_A_KELVIN_A_POINT = 50;

  private AsWritten() {}

  static long points(Ledger plan) {
    return plan.plan().placements().stream().mapToLong(run -> points(plan, run)).sum();
  }

  static long points(Ledger plan, Placement run) {
    BatchStep step = plan.stepOf(run);
    Need.Bake bake = step == null ? null : step.step().bake();
    Baking baking = run.baking();
    Oven oven = baking == null ? null : plan.event().kitchen().oven(baking.oven());
    return bake == null || baking == null || oven == null ? 0
        : tenths(bake, baking, oven) / TENTHS_OF_A_KELVIN_A_POINT;
  }

  private static long tenths(Need.Bake bake, Baking baking, Oven oven) {
    List<Need.Stage> stages = bake.stages();
    long tenths = 0;
    for (int i = 0; i < Math.min(stages.size(), baking.stages().size()); i++) {
      Setting best = oven.dial().nearest(converted(stages.get(i), baking.mode(), oven));
      tenths += tenths(best, baking.stages().get(i).mark());
    }
    return tenths;
  }

  /** Rounded, so that a thousandth of a kelvin that a Fahrenheit mark is off costs nobody a point. */
  private static long tenths(Setting best, Setting mark) {
    return Math.round(10 * Math.abs(mark.temperature().kelvinsAbove(best.temperature())));
  }

  /** As written, where that says nothing of the mode. */
  private static Temperature converted(Need.Stage stage, String mode, Oven oven) {
    Double by = oven.converts(stage.mode(), mode);
    return stage.written().temperature().plusKelvins(by == null ? 0 : by);
  }
}
