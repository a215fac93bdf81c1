package ovenloom.solver.bench;

import java.util.Arrays;
import java.util.Random;
import java.util.function.LongPredicate;
import ovenloom.solver.place.BothWays;
import ovenloom.solver.place.InnerDecoder;
import ovenloom.solver.place.InnerProblem;

/**
 * Searches for a short plan of an inner problem. Two crowds of plans make each other in turns: from two of those placed from the
 * first minute on comes one that is placed from the last minute back, and the other way round. After Debels and Vanhoucke
 * (2005), "A bi-population based genetic algorithm for the resource-constrained project scheduling problem". Where there are greatest gaps,
 * some steps are held back, too.
 */
public final class InnerSearch {

  private static final int NONE = Integer.MAX_VALUE;

  /** Children of two plans, the better of which takes its place. */
  private static final int CHILDREN = 2;

  /** The other of two plans is the shortest of so many, drawn by lot. */
  private static final int DRAWN = 4;

  private final BothWays problem;
  private final Random lot;
  private final Crossing crossing;
  private final HoldingBack holding;
  private final int leastLength;
  private final LongPredicate goesOn;
  private final int[][][] crowds;
  private final int[][] lengths;
  private final int[] child;
  private final int[] heldBack;
  private int[] turned;
  private int[] better;
  private long schedules;
  private int best = NONE;

  private InnerSearch(InnerProblem problem, int crowd, int leastLength, long seed, LongPredicate goesOn) {
    lot = new Random(seed);
    this.problem = new BothWays(problem, lot);
    this.leastLength = leastLength;
    this.goesOn = goesOn;
    int steps = problem.steps().size();
    crossing = new Crossing(lot, 3, 0.1);
    crowds = new int[2][crowd][steps];
    lengths = new int[2][crowd];
    child = new int[steps];
    heldBack = new int[steps];
    holding = new HoldingBack(this.problem, lot);
    turned = new int[steps];
    better = new int[steps];
  }

  /**
   * How long the shortest plan is that was found; {@link InnerDecoder#NO_PLAN} if there was none.
   *
   * @param crowd plans that are kept, placed either way
   * @param leastLength no plan is shorter: there the search ends
   * @param goesOn told how many schedules there were, each placing counted
   */
  public static int find(
      InnerProblem problem, int crowd, int leastLength, long seed, LongPredicate goesOn) {
    InnerSearch search = new InnerSearch(problem, crowd, leastLength, seed, goesOn);
    search.run();
    return search.best == NONE ? InnerDecoder.NO_PLAN : search.best;
  }

  private void run() {
    begin();
    for (int from = 0; !isOver(); from = 1 - from) {
      for (int each = 0; each < lengths[from].length && !isOver(); each++) {
        breed(from, each);
      }
    }
  }

  /** One crowd is drawn by lot; the other comes of it. */
  private void begin() {
    for (int[] each : lengths) {
      Arrays.fill(each, NONE);
    }
    for (int each = 0; each < lengths[0].length && !isOver(); each++) {
      Arrays.setAll(child, step -> lot.nextInt(child.length * child.length));
      lengths[0][each] = place(0, crowds[0][each]);
    }
  }

  private void breed(int from, int one) {
    int[][] crowd = crowds[from];
    int other = shortOne(lengths[from]);
    int shortest = NONE;
    for (int i = 0; i < CHILDREN && !isOver(); i++) {
      boolean first = i % 2 == 0;
      crossing.cross(crowd[first ? one : other], crowd[first ? other : one], child);
      holding.tell(from == 0, child, heldBack);
      int length = place(1 - from, turned);
      if (i == 0 || length < shortest) {
        shortest = length;
        int[] worse = better;
        better = turned;
        turned = worse;
      }
    }
    lengths[1 - from][one] = shortest;
    System.arraycopy(better, 0, crowds[1 - from][one], 0, better.length);
  }

  private int shortOne(int[] lengths) {
    int shortest = lot.nextInt(lengths.length);
    for (int i = 1; i < DRAWN; i++) {
      int each = lot.nextInt(lengths.length);
      shortest = lengths[each] < lengths[shortest] ? each : shortest;
    }
    return shortest;
  }

  private int place(int way, int[] into) {
    schedules++;
    int length = problem.place(way == 1, child, heldBack, into);
    int found = length == InnerDecoder.NO_PLAN ? NONE : length;
    best = Math.min(best, found);
    return found;
  }

  private boolean isOver() {
    return best <= leastLength || !goesOn.test(schedules);
  }
}
