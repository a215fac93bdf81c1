package ovenloom.solver.bench;

import java.util.Random;

/**
 * Makes a new wish for each step out of two plans: what lies in a window of the one stays as it is there, and what lies before
 * or after it is arranged as in the other. Where the two are nearly the same, some steps change places by lot.
 */
final class Crossing {

  private static final int FAR = 1 << 24;

  /** The window, in parts of the plan. */
  private static final double SMALLEST = 0.2;
  private static final double LARGEST = 0.5;

  private final Random lot;
  private final double alike;
  private final double changed;

  /**
   * How to cross.
   *
   * @param alike two plans are nearly the same if their steps are less apart than this, in the mean
   * @param changed the part of the steps that then change places
   */
  Crossing(Random lot, double alike, double changed) {
    this.lot = lot;
    this.alike = alike;
    this.changed = changed;
  }

  /** Whether what a child wants is a place in the window of the first plan. */
  static boolean isWithin(int wanted) {
    return wanted >= 0 && wanted < FAR / 2;
  }

  void cross(int[] one, int[] other, int[] child) {
    int length = 1;
    for (int time : one) {
      length = Math.max(length, time);
    }
    int window = (int) (length * lot.nextDouble(SMALLEST, LARGEST));
    int from = lot.nextInt(length - window + 1);
    long apart = 0;
    for (int step = 0; step < one.length; step++) {
      child[step] = one[step] < from ? other[step] - FAR
          : one[step] <= from + window ? one[step] : other[step] + FAR;
      apart += Math.abs(one[step] - other[step]);
    }
    if (apart < alike * one.length) {
      change(child);
    }
  }

  private void change(int[] child) {
    for (int step = 0; step < child.length; step++) {
      if (lot.nextDouble() < changed) {
        int other = lot.nextInt(child.length);
        int wanted = child[step];
        child[step] = child[other];
        child[other] = wanted;
      }
    }
  }
}
