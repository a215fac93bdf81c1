package ovenloom.solver.timeline;

import java.util.Arrays;

/** How many are free, over time: pieces of time over which the number does not change. */
final class Profile {

  private static final byte CUT_START = 1;
  private static final byte CUT_END = 2;

  final int start;
  final int end;
  int pieces = 1;
  int[] at = new int[16];
  int[] free = new int[16];

  private int basePieces;
  private int[] baseAt = new int[0];
  private int[] baseFree = new int[0];

  Profile(int start, int end, int capacity) {
    if (start >= end) {
      throw new IllegalArgumentException("the horizon [" + start + ", " + end + ") is empty");
    }
    this.start = start;
    this.end = end;
    at[0] = start;
    free[0] = capacity;
    keepAsBase();
  }

  void keepAsBase() {
    basePieces = pieces;
    baseAt = Arrays.copyOf(at, pieces);
    baseFree = Arrays.copyOf(free, pieces);
  }

  void backToBase() {
    pieces = basePieces;
    System.arraycopy(baseAt, 0, at, 0, pieces);
    System.arraycopy(baseFree, 0, free, 0, pieces);
  }

  int baseFreeAt(int moment) {
    int piece = basePieces - 1;
    while (baseAt[piece] > moment) {
      piece--;
    }
    return baseFree[piece];
  }

  /** The piece this moment lies in; the last one beyond the end, -1 before the start. */
  int pieceAt(int moment) {
    int low = 0;
    int high = pieces - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      if (at[middle] <= moment) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return high;
  }

  int endOf(int piece) {
    return piece + 1 < pieces ? at[piece + 1] : end;
  }

  int fewestOver(int from, int to) {
    int fewest = from < start || to > end ? 0 : Integer.MAX_VALUE;
    int piece = Math.max(0, pieceAt(from));
    while (piece < pieces && at[piece] < to) {
      fewest = Math.min(fewest, free[piece]);
      piece++;
    }
    return fewest;
  }

  int minutesBelowZero() {
    int minutes = 0;
    for (int piece = 0; piece < pieces; piece++) {
      minutes += free[piece] < 0 ? endOf(piece) - at[piece] : 0;
    }
    return minutes;
  }

  /** Takes from a stretch inside the horizon that is not empty; says which cuts it made. */
  byte take(int from, int to, int demand) {
    makeRoom();
    byte cuts = 0;
    int piece = pieceAt(from);
    if (at[piece] < from) {
      split(piece, from);
      piece++;
      cuts = CUT_START;
    }
    while (piece < pieces && endOf(piece) <= to) {
      free[piece] -= demand;
      piece++;
    }
    if (piece < pieces && at[piece] < to) {
      split(piece, to);
      free[piece] -= demand;
      cuts |= CUT_END;
    }
    return cuts;
  }

  /** Undoes the newest taking that has not been undone, given the cuts it made. */
  void giveBack(int from, int to, int demand, byte cuts) {
    int first = pieceAt(from);
    int piece = first;
    while (piece < pieces && at[piece] < to) {
      free[piece] += demand;
      piece++;
    }
    if ((cuts & CUT_END) != 0) {
      join(piece);
    }
    if ((cuts & CUT_START) != 0) {
      join(first);
    }
  }

  private void split(int piece, int moment) {
    System.arraycopy(at, piece, at, piece + 1, pieces - piece);
    System.arraycopy(free, piece, free, piece + 1, pieces - piece);
    at[piece + 1] = moment;
    pieces++;
  }

  private void join(int piece) {
    pieces--;
    System.arraycopy(at, piece + 1, at, piece, pieces - piece);
    System.arraycopy(free, piece + 1, free, piece, pieces - piece);
  }

  private void makeRoom() {
    if (pieces + 2 > at.length) {
      at = Arrays.copyOf(at, 2 * at.length);
      free = Arrays.copyOf(free, 2 * free.length);
    }
  }
}
