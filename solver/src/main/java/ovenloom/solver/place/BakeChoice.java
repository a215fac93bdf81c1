package ovenloom.solver.place;

import java.util.ArrayList;
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
 * @param hold where the dial stands while food stays in the oven
 * @param held minutes that it stays in there after its bake, at the last of the marks; 0 if it is taken out
 */
public record BakeChoice(
    int oven, String mode, List<Setting> marks, Bake bake, List<Integer> racks, int points,
    boolean asWritten, Hold hold, int held) {

  /**
   * Where an oven's dial stands while food waits in it.
   *
   * @param setting the mark in the bake's mode, by number
   */
  public record Hold(Setting mark, int setting) {}

  public BakeChoice {
    marks = List.copyOf(marks);
    racks = List.copyOf(racks);
  }

  /** The same, but that the food stays in the oven for some minutes. */
  BakeChoice held(int minutes) {
    List<Setting> all = new ArrayList<>(marks);
    all.add(hold.mark());
    return new BakeChoice(
        oven, mode, all, bake.held(minutes, hold.setting()), racks, points, asWritten, hold, minutes);
  }

  /** How many of the marks are the bake's own. */
  int stages() {
    return held > 0 ? marks.size() - 1 : marks.size();
  }

  /** Whether both are in one oven, at one mark, in one mode, as they go in. */
  public boolean goesWith(BakeChoice other) {
    return oven == other.oven && bake.setting(0) == other.bake.setting(0);
  }
}
