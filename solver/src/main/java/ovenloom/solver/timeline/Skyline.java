package ovenloom.solver.timeline;

/**
 * Lays rectangles one after the other, in a given order, as near as they will go on top of those
 * already there. Quick, and blind to the room left under an overhang.
 */
final class Skyline {

  private final boolean sideways;
  private final int width;
  private final int depth;
  private final Pieces pieces;

  private final int[] x;
  private final int[] y;
  private int steps;

  private int bestStep;
  private int bestY;
  private boolean bestTurned;
  private long bestScore;

  /** Sideways, it builds from left to right instead of from near to far. */
  Skyline(int width, int depth, Pieces pieces, boolean sideways) {
    this.sideways = sideways;
    this.width = sideways ? depth : width;
    this.depth = sideways ? width : depth;
    this.pieces = pieces;
    x = new int[2 * pieces.count() + 1];
    y = new int[2 * pieces.count() + 1];
  }

  /** Lays pieces of these kinds in this order; thrifty, it wastes little before it lies near. */
  boolean lay(int[] kinds, boolean thrifty) {
    steps = 1;
    x[0] = 0;
    y[0] = 0;
    for (int i = 0; i < kinds.length; i++) {
      int longer = pieces.longSide(kinds[i]);
      int shorter = pieces.shortSide(kinds[i]);
      bestScore = Long.MAX_VALUE;
      tryAll(longer, shorter, false, thrifty);
      tryAll(shorter, longer, true, thrifty);
      if (bestScore == Long.MAX_VALUE) {
        return false;
      }
      pieces.lay(
          i,
          kinds[i],
          sideways ? bestY : x[bestStep],
          sideways ? x[bestStep] : bestY,
          bestTurned != sideways);
      raise(bestTurned ? shorter : longer, bestY + (bestTurned ? longer : shorter));
    }
    return true;
  }

  private void tryAll(int across, int along, boolean turned, boolean thrifty) {
    for (int step = 0; step < steps && x[step] + across <= width; step++) {
      int right = x[step] + across;
      int near = 0;
      for (int over = step; over < steps && x[over] < right; over++) {
        near = Math.max(near, y[over]);
      }
      if (near + along <= depth) {
        long score = thrifty ? wasted(step, right, near) : (long) near + along;
        if (score < bestScore) {
          bestScore = score;
          bestStep = step;
          bestY = near;
          bestTurned = turned;
        }
      }
    }
  }

  private long wasted(int step, int right, int near) {
    long wasted = 0;
    for (int over = step; over < steps && x[over] < right; over++) {
      wasted += (long) (Math.min(right, endOf(over)) - x[over]) * (near - y[over]);
    }
    return wasted;
  }

  private int endOf(int step) {
    return step + 1 < steps ? x[step + 1] : width;
  }

  /** The best step becomes this wide and this high; what it hides goes. */
  private void raise(int across, int top) {
    int right = x[bestStep] + across;
    int last = bestStep;
    while (endOf(last) < right) {
      last++;
    }
    boolean rest = endOf(last) > right;
    int restY = y[last];
    int kept = steps - last - 1;
    int target = bestStep + (rest ? 2 : 1);
    System.arraycopy(x, last + 1, x, target, kept);
    System.arraycopy(y, last + 1, y, target, kept);
    y[bestStep] = top;
    if (rest) {
      x[bestStep + 1] = right;
      y[bestStep + 1] = restY;
    }
    steps = target + kept;
  }
}
