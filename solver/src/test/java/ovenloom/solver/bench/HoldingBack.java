package ovenloom.solver.bench;

import java.util.Arrays;
import java.util.Random;
import ovenloom.solver.place.BothWays;

/**
 * Holds steps back by lot that greatest gaps tie to others: where each is placed as near as it fits, there are best plans that no order
 * leads to. Most are held where they were in the plan that they come from, a few some minutes longer.
 */
final class HoldingBack {

  /** Of a hundred plans, so many hold steps back. */
  private static final int OFTEN = 70;

  /** Of a hundred steps, at most so many are held longer, and by how many minutes at most. */
  private static final int MOST_LONGER = 20;
  private static final int LONGER = 10;

  private static final int HUNDRED = 100;

  private final Random lot;
  private final int[] forward;
  private final int[] backward;

  HoldingBack(BothWays problem, Random lot) {
    this.lot = lot;
    forward = problem.thatMayWait(false);
    backward = problem.thatMayWait(true);
  }

  /**
   * Says for each step how far from where placing begins it may be at the nearest.
   *
   * @param wanted where each wants to be; only what is within the plan it comes from is held there
   */
  void tell(boolean fromTheEnd, int[] wanted, int[] heldBack) {
    Arrays.fill(heldBack, 0);
    int[] some = fromTheEnd ? backward : forward;
    if (some.length == 0 || lot.nextInt(HUNDRED) >= OFTEN) {
      return;
    }
    int kept = 1 + lot.nextInt(HUNDRED);
    int longer = lot.nextInt(MOST_LONGER + 1);
    for (int step : some) {
      if (Crossing.isWithin(wanted[step]) && lot.nextInt(HUNDRED) < kept) {
        heldBack[step] = wanted[step];
      }
      if (lot.nextInt(HUNDRED) < longer) {
        heldBack[step] += 1 + lot.nextInt(LONGER);
      }
    }
  }
}
