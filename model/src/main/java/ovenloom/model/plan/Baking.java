package ovenloom.model.plan;

import java.util.List;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.StartState;

/**
 * How a bake is run.
 *
 * @param stages one after the other, filling the placement's stretch
 * @param racks one for each vessel, batch by batch, counted from the bottom, from 0
 * @param state how cold its minutes assume the food to be
 */
public record Baking(String oven, String mode, List<StageRun> stages, List<Integer> racks, StartState state) {

  /** A stage at its mark. */
  public record StageRun(Setting mark, Stretch when) {}

  public Baking {
    stages = List.copyOf(stages);
    racks = List.copyOf(racks);
  }
}
