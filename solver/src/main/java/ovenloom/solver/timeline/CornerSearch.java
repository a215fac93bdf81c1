package ovenloom.solver.timeline;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/**
 * Finds room for rectangles on a rectangle, or proves that there is none.
 *
 * <p>Any layout can be slid towards the near left corner and then built piece by piece so that each
 * new piece lies to the right of, or beyond, every earlier one: the pieces laid so far cover a
 * staircase, and the next one goes into one of its inner corners. So trying each piece, both ways
 * round, in each corner leaves nothing out. A staircase that failed once with the same pieces left
 * is not tried again.
 */
final class CornerSearch {

  private static final int REMEMBERED = 1 << 18;

  private final int width;
  private final int depth;
  private final Pieces pieces;
  private final int[] left;
  private final Staircase[] stairs;
  private final Set<Tried> failed = new HashSet<>();
  private long triesLeft;
  private boolean gaveUp;

  CornerSearch(int width, int depth, Pieces pieces) {
    this.width = width;
    this.depth = depth;
    this.pieces = pieces;
    left = pieces.countOfEachKind();
    stairs = new Staircase[pieces.count() + 1];
    Arrays.setAll(stairs, i -> new Staircase(pieces.count()));
  }

  /** Whether there is room; tries no more than so many staircases. */
  boolean search(long tries) {
    triesLeft = tries;
    gaveUp = false;
    return lay(0, pieces.area());
  }

  private boolean lay(int laid, long areaLeft) {
    if (laid == pieces.count()) {
      return true;
    }
    Staircase now = stairs[laid];
    if (triesLeft-- <= 0) {
      gaveUp = true;
      return false;
    }
    if ((long) width * depth - now.lost(width, depth, thinnestLeft()) < areaLeft) {
      return false;
    }
    Tried tried = new Tried(now.and(left));
    if (failed.contains(tried)) {
      return false;
    }
    for (int kind = 0; kind < left.length; kind++) {
      if (left[kind] > 0 && layOneOf(kind, laid, areaLeft)) {
        return true;
      }
    }
    if (!gaveUp && failed.size() < REMEMBERED) {
      failed.add(tried);
    }
    return false;
  }

  private boolean layOneOf(int kind, int laid, long areaLeft) {
    int longer = pieces.longSide(kind);
    int shorter = pieces.shortSide(kind);
    long rest = areaLeft - (long) longer * shorter;
    left[kind]--;
    for (int corner = 0; corner <= stairs[laid].steps; corner++) {
      if (layAt(corner, kind, false, laid, rest)
          || (longer != shorter && layAt(corner, kind, true, laid, rest))) {
        return true;
      }
    }
    left[kind]++;
    return false;
  }

  private boolean layAt(int corner, int kind, boolean turned, int laid, long rest) {
    Staircase now = stairs[laid];
    int x = now.cornerX(corner);
    int y = now.cornerY(corner);
    int right = x + (turned ? pieces.shortSide(kind) : pieces.longSide(kind));
    int far = y + (turned ? pieces.longSide(kind) : pieces.shortSide(kind));
    if (right > width || far > depth) {
      return false;
    }
    stairs[laid + 1].extend(now, corner, right, far);
    pieces.lay(laid, kind, x, y, turned);
    return lay(laid + 1, rest);
  }

  private int thinnestLeft() {
    int thinnest = Integer.MAX_VALUE;
    for (int kind = 0; kind < left.length; kind++) {
      if (left[kind] > 0) {
        thinnest = Math.min(thinnest, pieces.shortSide(kind));
      }
    }
    return thinnest;
  }

  /** A staircase and the pieces left, as one thing to look up. */
  private static final class Tried {

    private final int[] numbers;
    private final int hash;

    Tried(int[] numbers) {
      this.numbers = numbers;
      hash = Arrays.hashCode(numbers);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Tried tried && Arrays.equals(numbers, tried.numbers);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }
}
