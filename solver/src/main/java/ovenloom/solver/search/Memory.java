package ovenloom.solver.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import ovenloom.solver.order.Amiss;

/** What schedules came to that were tried lately, a place for each rest of a print: so that they need not be decoded again. */
final class Memory {

  private static final int MOST = 4_096;

  private final @Nullable Known[] known = new Known[MOST];

  /**
   * What a schedule came to.
   *
   * @param cost of its score alone
   * @param price what the search is told
   * @param amiss the steps that came out wrong
   */
  record Known(long print, long cost, long price, Amiss amiss) {}

  /** What decisions of this print came to; null if they were not tried lately. */
  @Nullable
  Known of(long print) {
    Known here = known[slot(print)];
    return here != null && here.print() == print ? here : null;
  }

  /** Takes the place of another. */
  void add(Known latest) {
    known[slot(latest.print())] = latest;
  }

  void clear() {
    Arrays.fill(known, null);
  }

  private static int slot(long print) {
    return (int) Long.remainderUnsigned(print, MOST);
  }
}
