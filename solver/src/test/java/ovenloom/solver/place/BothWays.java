package ovenloom.solver.place;

import java.util.Arrays;
import java.util.Random;

/**
 * Places the steps of an inner problem by when each wants to be, from the first minute on or from the last one back. What it
 * says of a plan is what the steps would want if they were placed the other way next: so the plan is justified, as the
 * books have it, whenever it is turned round. Belongs to one thread.
 */
public final class BothWays {

  private static final int STEP = (1 << 12) - 1;
  private static final int LOTS = 1 << 16;

  private final InnerDecoder forward;
  private final InnerDecoder backward;
  private final int[] minutes;
  private final Random lot;
  private final long[] queue;
  private final int[] order;

  /** Draws lots where two steps want the same. */
  public BothWays(InnerProblem problem, Random lot) {
    forward = InnerDecoder.forward(problem);
    backward = InnerDecoder.backward(problem);
    minutes = problem.steps().stream().mapToInt(InnerProblem.Step::minutes).toArray();
    this.lot = lot;
    queue = new long[minutes.length];
    order = new int[minutes.length];
  }

  public int steps() {
    return order.length;
  }

  /** The steps that it may pay to hold back, when placed that way; none where there are no greatest gaps. */
  public int[] thatMayWait(boolean fromTheEnd) {
    return (fromTheEnd ? backward : forward).thatMayWait();
  }

  /**
   * One schedule.
   *
   * @param wanted for each step, as far from where placing begins as it is told here
   * @param heldBack for each step, how far from there it may be at the nearest
   * @param turned takes for each step what it wants the other way; where there is no plan, the same order turned round
   * @return how long the plan is; or {@link InnerDecoder#NO_PLAN}
   */
  public int place(boolean fromTheEnd, int[] wanted, int[] heldBack, int[] turned) {
    queueBy(wanted);
    InnerDecoder decoder = fromTheEnd ? backward : forward;
    int length = decoder.decode(order, heldBack);
    for (int turn = 0; turn < order.length; turn++) {
      int step = order[turn];
      turned[step] = length == InnerDecoder.NO_PLAN ? order.length - turn
          : fromTheEnd ? length + decoder.start(step)
              : length - decoder.start(step) - minutes[step];
    }
    return length;
  }

  private void queueBy(int[] wanted) {
    for (int step = 0; step < wanted.length; step++) {
      queue[step] = ((long) wanted[step] << 32) | ((long) lot.nextInt(LOTS) << 12) | step;
    }
    Arrays.sort(queue);
    for (int turn = 0; turn < order.length; turn++) {
      order[turn] = (int) queue[turn] & STEP;
    }
  }
}
