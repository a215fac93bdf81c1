package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * Stretches with an owner and a kind, in the order in which they start, and the way back from each
 * to the state before it was added. They may overlap.
 */
final class Bookings {

  int count;
  int[] from = new int[16];
  int[] to = new int[16];
  int[] owner = new int[16];
  int[] kind = new int[16];

  /** The latest end of this booking and all before it, so that a look back knows when to stop. */
  int[] reach = new int[16];

  private int added;
  private int[] addedAt = new int[16];

  private int baseCount;
  private int[] baseFrom = new int[0];
  private int[] baseTo = new int[0];
  private int[] baseOwner = new int[0];
  private int[] baseKind = new int[0];

  void add(int start, int end, int whose, int which) {
    makeRoom();
    int place = lastStartingBefore(start + 1) + 1;
    shift(place, place + 1);
    count++;
    from[place] = start;
    to[place] = end;
    owner[place] = whose;
    kind[place] = which;
    measureReach(place);
    addedAt[added++] = place;
  }

  /** The last booking that starts before the moment, or -1. */
  int lastStartingBefore(int moment) {
    int low = 0;
    int high = count - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      if (from[middle] < moment) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return high;
  }

  int mark() {
    return added;
  }

  void rollback(int mark) {
    while (added > mark) {
      int place = addedAt[--added];
      shift(place + 1, place);
      count--;
      measureReach(place);
    }
  }

  void keepAsBase() {
    added = 0;
    baseCount = count;
    baseFrom = Arrays.copyOf(from, count);
    baseTo = Arrays.copyOf(to, count);
    baseOwner = Arrays.copyOf(owner, count);
    baseKind = Arrays.copyOf(kind, count);
  }

  void backToBase() {
    added = 0;
    count = baseCount;
    System.arraycopy(baseFrom, 0, from, 0, count);
    System.arraycopy(baseTo, 0, to, 0, count);
    System.arraycopy(baseOwner, 0, owner, 0, count);
    System.arraycopy(baseKind, 0, kind, 0, count);
    measureReach(0);
  }

  private void shift(int source, int target) {
    int moved = count - source;
    System.arraycopy(from, source, from, target, moved);
    System.arraycopy(to, source, to, target, moved);
    System.arraycopy(owner, source, owner, target, moved);
    System.arraycopy(kind, source, kind, target, moved);
  }

  private void measureReach(int first) {
    int latest = first == 0 ? Integer.MIN_VALUE : reach[first - 1];
    for (int i = first; i < count; i++) {
      latest = Math.max(latest, to[i]);
      reach[i] = latest;
    }
  }

  private void makeRoom() {
    if (count == from.length) {
      int room = 2 * count;
      from = Arrays.copyOf(from, room);
      to = Arrays.copyOf(to, room);
      owner = Arrays.copyOf(owner, room);
      kind = Arrays.copyOf(kind, room);
      reach = Arrays.copyOf(reach, room);
      addedAt = Arrays.copyOf(addedAt, room);
    }
  }
}
