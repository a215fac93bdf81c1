package ovenloom.solver.timeline;

/**
 * What can no longer be used when each new piece must lie to the right of, or beyond, all laid so
 * far: everything up to the right edge and the far edge of any of them. The outer corners of that
 * area are kept from left to right, and so from far to near.
 */
final class Staircase {

  int steps;
  private final int[] right;
  private final int[] far;

  Staircase(int pieces) {
    right = new int[pieces];
    far = new int[pieces];
  }

  /** Across to the inner corner; the first touches the left wall, the last the near one. */
  int cornerX(int corner) {
    return corner == 0 ? 0 : right[corner - 1];
  }

  int cornerY(int corner) {
    return corner == steps ? 0 : far[corner];
  }

  /** Becomes the other one with a piece laid into a corner of it. */
  void extend(Staircase other, int corner, int newRight, int newFar) {
    steps = 0;
    for (int i = 0; i < corner; i++) {
      if (other.far[i] > newFar) {
        add(other.right[i], other.far[i]);
      }
    }
    add(newRight, newFar);
    for (int i = corner; i < other.steps; i++) {
      if (other.right[i] > newRight) {
        add(other.right[i], other.far[i]);
      }
    }
  }

  private void add(int newRight, int newFar) {
    right[steps] = newRight;
    far[steps++] = newFar;
  }

  /** The area covered, with the strips along the walls that are too thin for any piece left. */
  long lost(int width, int depth, int thinnest) {
    long lost = 0;
    int from = 0;
    for (int i = 0; i < steps; i++) {
      int reach = depth - far[i] < thinnest ? depth : far[i];
      lost += (long) (right[i] - from) * reach;
      if (width - right[i] < thinnest) {
        return lost + (long) (width - right[i]) * far[i];
      }
      from = right[i];
    }
    return lost;
  }

  /** Its numbers with some more, to tell it from another by. */
  int[] and(int[] more) {
    int[] numbers = new int[more.length + 2 * steps];
    System.arraycopy(more, 0, numbers, 0, more.length);
    System.arraycopy(right, 0, numbers, more.length, steps);
    System.arraycopy(far, 0, numbers, more.length + steps, steps);
    return numbers;
  }
}
