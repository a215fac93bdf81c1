package ovenloom.solver.place;

import ovenloom.model.kitchen.BurnerSize;

/**
 * One vessel of a run.
 *
 * @param shape its footprint by number, or {@link #NO_ROOM}
 * @param isDeeperThanWide whether the second side of its written size is the longer
 * @param height micrometres; 0 where nobody gave one
 * @param burner the least burner it may stand on
 */
public record Piece(int shape, boolean isDeeperThanWide, long height, BurnerSize burner) {

  /** The shape of a vessel that takes no room. */
  public static final int NO_ROOM = -1;
}
