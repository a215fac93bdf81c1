package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * The shapes that vessels stand on, each numbered once, so that a search compares small numbers.
 * Sides are in micrometres, in which both the millimetre and a sixty-fourth of an inch are whole
 * to within half a micrometre. A shape turned by 90 degrees is the same shape.
 */
public final class Footprints {

  private int count;
  private int[] longSide = new int[16];
  private int[] shortSide = new int[16];

  /**
   * The number of this shape, the same each time.
   *
   * @throws IllegalArgumentException if a side is not above zero
   */
  public int number(int width, int depth) {
    if (width <= 0 || depth <= 0) {
      throw new IllegalArgumentException("a vessel cannot stand on " + width + " x " + depth);
    }
    int longer = Math.max(width, depth);
    int shorter = Math.min(width, depth);
    for (int i = 0; i < count; i++) {
      if (longSide[i] == longer && shortSide[i] == shorter) {
        return i;
      }
    }
    if (count == longSide.length) {
      longSide = Arrays.copyOf(longSide, 2 * count);
      shortSide = Arrays.copyOf(shortSide, 2 * count);
    }
    longSide[count] = longer;
    shortSide[count] = shorter;
    return count++;
  }

  /** The longer side, in micrometres. */
  public int longSide(int number) {
    return longSide[number];
  }

  /** The shorter side, in micrometres. */
  public int shortSide(int number) {
    return shortSide[number];
  }

  long area(int number) {
    return (long) longSide[number] * shortSide[number];
  }
}
