package ovenloom.solver.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.StartState;
import ovenloom.solver.timeline.Bake;

/**
 * One way to bake a run.
 *
 * @param oven its number in the kitchen's list
 * @param mode the oven's
 * @param marks one for each stage
 * @param bake as the oven's dial sees it, with its stay if it has one
 * @param racks which of the oven's racks will do
 * @param points what the marks cost, off those that were written
 * @param asWritten whether the marks are those nearest to what was written
 * @param state how cold its minutes take the food to be as it goes in
 * @param coldest that this admits, C
 * @param minutes that it needs so
 * @param needed from other starts
 * @param hands whose hands it needs when
 * @param hold where the dial stands while food stays in the oven
 * @param held minutes that it stays in there after its bake; 0 if it is taken out
 */
public record BakeChoice(
    int oven, String mode, List<Setting> marks, Bake bake, List<Integer> racks, int points,
    boolean asWritten, StartState state, double coldest, int minutes, NeededFrom needed,
    List<HandsNeed> hands, Hold hold,
    int held) {

  /** Kelvins that make no difference. */
  private static final double NEARLY = 0.5;

  /**
   * Where an oven's dial stands while food waits in it.
   *
   * @param mark null where it is switched off
   * @param setting the mark in the bake's mode, by number
   */
  public record Hold(@Nullable Setting mark, int setting) {

    static final Hold OFF = new Hold(null, Bake.OFF);
  }

  public BakeChoice {
    marks = List.copyOf(marks);
    racks = List.copyOf(racks);
    hands = List.copyOf(hands);
  }

  /** The same, but that the food stays in the oven for some minutes, at its holding mark or switched off. */
  BakeChoice held(int stay, boolean off) {
    Hold at = off ? Hold.OFF : hold;
    return new BakeChoice(
        oven, mode, marks, bake.held(stay, at.setting()), racks, points, asWritten, state, coldest,
        minutes, needed, hands, at, stay);
  }

  /** Whether food that is so cold, C, is no colder than this takes it to be. */
  boolean admits(double celsius) {
    return celsius >= coldest - NEARLY;
  }

  /** Whether both are the same but for how cold the food goes in. */
  boolean isAt(BakeChoice other) {
    return oven == other.oven && mode.equals(other.mode) && marks.equals(other.marks);
  }

  /** Whether both are in one oven, at one mark, in one mode, as they go in. */
  public boolean goesWith(BakeChoice other) {
    return oven == other.oven && bake.setting(0) == other.bake.setting(0);
  }
}
