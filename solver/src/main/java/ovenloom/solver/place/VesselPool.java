package ovenloom.solver.place;

import java.util.Arrays;
import java.util.List;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.measure.Stretch;

import ovenloom.solver.timeline.Timeline;

/**
 * All vessels of one kind, over time: taken, dirty, washed, clean. Washes are put in where the count would fall short,
 * and take a cook.
 */
public final class VesselPool {

  private static final int NEVER = Integer.MAX_VALUE;

  /** The filling of what is none. */
  private static final int NONE = -1;

  private final int vessel;
  private final int count;
  private final int washMinutes;
  private final Crew crew;

  private int fills;
  private final int[] from;
  private final int[] to;
  private final int[] pieces;
  private final int[] clean;
  private final int[] fillOf;

  /** The first of them are not fillings: pieces that others have, and, after those, all of them out of hours. */
  private final int others;
  private final int fixed;

  private int washes;
  private final int[] washFrom;
  private final int[] washCook;

  /**
   * So many vessels; at most {@code most} fillings of them.
   *
   * @param taken by others
   * @param closed when they may not be used
   */
  VesselPool(
      int vessel, int count, int washMinutes, int most, Crew crew, List<Availability.Taken> taken,
      List<Stretch> closed) {
    this.vessel = vessel;
    this.count = count;
    this.washMinutes = washMinutes;
    this.crew = crew;
    others = taken.size();
    fixed = others + closed.size();
    from = new int[fixed + most];
    to = new int[fixed + most];
    pieces = new int[fixed + most];
    clean = new int[fixed + most];
    fillOf = new int[fixed + most];
    washFrom = new int[most * 4];
    washCook = new int[most * 4];
    taken.forEach(each -> fix(each.when(), each.count()));
    closed.forEach(stretch -> fix(stretch, count));
  }

  private void fix(Stretch when, int many) {
    from[fills] = when.from();
    to[fills] = when.to();
    pieces[fills] = many;
    clean[fills] = when.to();
    fillOf[fills++] = NONE;
  }

  /**
   * The latest start, not after this one, of a run of a filling, with enough vessels that no other food is in; or NONE.
   * Between its runs a filling keeps its vessels.
   */
  int latestStart(int notAfter, int minutes, int fill, int wanted) {
    if (wanted > count) {
      return Timeline.NONE;
    }
    int mine = find(fill);
    int start = notAfter;
    int crowded = crowded(start, minutes, mine, wanted);
    while (crowded != NEVER) {
      if (mine >= 0 && crowded < to[mine]) {
        return Timeline.NONE;
      }
      start = crowded - minutes;
      crowded = crowded(start, minutes, mine, wanted);
    }
    return start;
  }

  /** From when on, at the latest, others leave too few at some minute of a filling with one more run; or NEVER. */
  private int crowded(int start, int minutes, int mine, int wanted) {
    int low = mine < 0 ? start : Math.min(start, from[mine]);
    int high = mine < 0 ? start + minutes : Math.max(start + minutes, to[mine]);
    if (inUseAtMost(low, high, mine) + wanted <= count) {
      return NEVER;
    }
    for (int i = 0; i < fills; i++) {
      int moment = Math.max(low, from[i]);
      if (i != mine && from[i] < high && low < to[i] && inUse(moment, mine) + wanted > count) {
        return lastTaken(moment, mine);
      }
    }
    return NEVER;
  }

  /** No more are in use at any minute of a stretch. */
  private int inUseAtMost(int low, int high, int except) {
    int all = 0;
    for (int i = 0; i < fills; i++) {
      if (from[i] < high && low < to[i] && i != except) {
        all += pieces[i];
      }
    }
    return all;
  }

  /** When the last of those in use at a moment was taken. */
  private int lastTaken(int moment, int except) {
    int last = Integer.MIN_VALUE;
    for (int i = 0; i < fills; i++) {
      if (i != except && from[i] <= moment && moment < to[i]) {
        last = Math.max(last, from[i]);
      }
    }
    return last;
  }

  private int inUse(int moment, int except) {
    int all = 0;
    for (int i = 0; i < fills; i++) {
      if (i != except && from[i] <= moment && moment < to[i]) {
        all += pieces[i];
      }
    }
    return all;
  }

  /** Takes vessels for a filling over a stretch, or lengthens what it has; washes up where it must. False: no room. */
  boolean take(int fill, int wanted, int start, int end) {
    int mine = find(fill);
    if (mine < 0) {
      mine = fills++;
      fillOf[mine] = fill;
      pieces[mine] = wanted;
      from[mine] = start;
      to[mine] = end;
      clean[mine] = NEVER;
    } else {
      from[mine] = Math.min(from[mine], start);
      to[mine] = Math.max(to[mine], end);
      if (clean[mine] != NEVER && clean[mine] - washMinutes < to[mine]) {
        clean[mine] = NEVER;
      }
    }
    if (isOutOfHours(mine)) {
      return false;
    }
    for (int tries = 0; tries <= 2 * fills; tries++) {
      int shortAt = firstShortage();
      if (shortAt == NEVER) {
        return true;
      }
      if (!washBefore(shortAt)) {
        return false;
      }
    }
    return false;
  }

  private boolean isOutOfHours(int mine) {
    for (int i = others; i < fixed; i++) {
      if (from[i] < to[mine] && from[mine] < to[i]) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is only that the vessels are not to be used then. */
  private boolean isClosing(int i) {
    return others <= i && i < fixed;
  }

  private int find(int fill) {
    for (int i = 0; i < fills; i++) {
      if (fillOf[i] == fill) {
        return i;
      }
    }
    return -1;
  }

  private int firstShortage() {
    int first = NEVER;
    for (int i = 0; i < fills; i++) {
      if (from[i] < first && !isClosing(i) && takenAt(from[i]) > count) {
        first = from[i];
      }
    }
    return first;
  }

  private int takenAt(int moment) {
    int all = 0;
    for (int i = 0; i < fills; i++) {
      if (!isClosing(i) && from[i] <= moment && moment < clean[i]) {
        all += pieces[i];
      }
    }
    return all;
  }

  /** Washes what must be clean at a moment, as late as someone is free, all that is dirty by then at once. */
  private boolean washBefore(int moment) {
    int missing = takenAt(moment) - count;
    int ready = whenDirty(moment, missing);
    if (ready == NEVER) {
      return false;
    }
    int wash = existing(ready, moment);
    if (wash < 0) {
      int start = crew.latestWash(moment - washMinutes, washMinutes);
      if (start < ready || washes == washFrom.length) {
        return false;
      }
      wash = washes++;
      washFrom[wash] = start;
      washCook[wash] = crew.takeForWash(start, washMinutes);
    }
    for (int i = 0; i < fills; i++) {
      if (to[i] <= washFrom[wash] && clean[i] > washFrom[wash] + washMinutes) {
        clean[i] = washFrom[wash] + washMinutes;
      }
    }
    return true;
  }

  /** When so many of those dirty at a moment are dirty at last. */
  private int whenDirty(int moment, int missing) {
    int ready = NEVER;
    for (int i = 0; i < fills; i++) {
      if (isDirty(i, moment) && to[i] < ready && dirtyBy(to[i], moment) >= missing) {
        ready = to[i];
      }
    }
    return ready;
  }

  private int dirtyBy(int end, int moment) {
    int all = 0;
    for (int i = 0; i < fills; i++) {
      if (isDirty(i, moment) && to[i] <= end) {
        all += pieces[i];
      }
    }
    return all;
  }

  private boolean isDirty(int i, int moment) {
    return to[i] <= moment && moment < clean[i];
  }

  private int existing(int ready, int moment) {
    for (int i = 0; i < washes; i++) {
      if (ready <= washFrom[i] && washFrom[i] + washMinutes <= moment) {
        return i;
      }
    }
    return -1;
  }

  /** One wash that was put in. */
  public record Done(int vessel, int pieces, int from, int to, int cook) {}

  int washes() {
    return washes;
  }

  /** A wash, and how many pieces it makes clean; none where later changes left it nothing to wash. */
  Done wash(int wash) {
    int all = 0;
    int end = washFrom[wash] + washMinutes;
    for (int i = 0; i < fills; i++) {
      all += clean[i] == end ? pieces[i] : 0;
    }
    return new Done(vessel, all, washFrom[wash], end, washCook[wash]);
  }

  /** When the last of what a wash makes clean is dirty. */
  int dirty(int wash) {
    int last = Timeline.NONE;
    int end = washFrom[wash] + washMinutes;
    for (int i = 0; i < fills; i++) {
      last = clean[i] == end ? Math.max(last, to[i]) : last;
    }
    return last;
  }

  void clear() {
    fills = fixed;
    washes = 0;
    Arrays.fill(clean, fixed, clean.length, NEVER);
  }

  /** A copy to go back to. */
  State state() {
    return new State(fills, washes, Arrays.copyOf(from, fills), Arrays.copyOf(to, fills),
        Arrays.copyOf(pieces, fills), Arrays.copyOf(clean, fills), Arrays.copyOf(fillOf, fills));
  }

  void back(State state) {
    fills = state.fills;
    washes = state.washes;
    System.arraycopy(state.from, 0, from, 0, fills);
    System.arraycopy(state.to, 0, to, 0, fills);
    System.arraycopy(state.pieces, 0, pieces, 0, fills);
    System.arraycopy(state.clean, 0, clean, 0, fills);
    System.arraycopy(state.fillOf, 0, fillOf, 0, fills);
  }

  static final class State {
    private final int fills;
    private final int washes;
    private final int[] from;
    private final int[] to;
    private final int[] pieces;
    private final int[] clean;
    private final int[] fillOf;

    private State(int fills, int washes, int[] from, int[] to, int[] pieces, int[] clean, int[] fillOf) {
      this.fills = fills;
      this.washes = washes;
      this.from = from;
      this.to = to;
      this.pieces = pieces;
      this.clean = clean;
      this.fillOf = fillOf;
    }
  }
}
