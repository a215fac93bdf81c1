package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.measure.Setting;
import ovenloom.solver.timeline.Bake;

/**
 * One way to bake a run.
 *
 * @param oven its number in the kitchen's list
 * @param mode the oven's
 * @param marks one for each stage
 * @param bake as the oven's dial sees it
 * @param racks which of the oven's racks will do
 * @param points what the marks cost, off those that were written
 * @param asWritten whether the marks are those nearest to what was written
 */
public record BakeChoice(
    int oven, String mode, List<Setting> marks, Bake bake, List<Integer> racks, int points,
    boolean asWritten) {

  public BakeChoice {
    marks = List.copyOf(marks);
    racks = List.copyOf(racks);
  }

  /** Whether both are in one oven, at one mark, in one mode, as they go in. */
  public boolean goesWith(BakeChoice other) {
    return oven == other.oven && bake.setting(0) == other.bake.setting(0);
  }
}
