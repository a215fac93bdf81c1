package ovenloom.solver.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Keeps;

/**
 * Food of a run that may have to wait.
 *
 * @param run whose food
 * @param batches which batches of it
 * @param pieces the vessels it waits in
 * @param takers those that take it, the table among them
 * @param keeps how long it stays good
 */
public record Wait(int run, Batches batches, List<Piece> pieces, List<Taker> takers, Keeps keeps) {

  /** The run number of a taker that is the table. */
  public static final int TABLE = -1;

  /**
   * Who takes the food, or a part of it.
   *
   * @param run its number, or {@link #TABLE}
   * @param due when the table wants it
   * @param most minutes of the gap, where the link says so
   */
  public record Taker(int run, int due, @Nullable Integer most) {}

  public Wait {
    pieces = List.copyOf(pieces);
    takers = List.copyOf(takers);
  }

  /** Minutes on the counter beyond the free ones, for one taker. */
  public int onTheCounter(Taker taker) {
    Integer most = taker.most();
    Integer counter = keeps.counter();
    return most != null ? most : counter != null ? counter : 0;
  }
}
