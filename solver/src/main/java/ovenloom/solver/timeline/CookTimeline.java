package ovenloom.solver.timeline;

/**
 * One cook, over time: their hours less their breaks, and one thing at a time.
 *
 * <p>The one exception is the oven door: what starts at the same minute under the same tag may
 * overlap, so that the roast comes out and the rolls go in while the door stands open once.
 */
public final class CookTimeline implements Timeline {

  /** The tag of work that shares a cook with nothing. */
  public static final int ALONE = -1;

  private final int horizonStart;
  private final int horizonEnd;
  private final Bookings busy = new Bookings();
  private int blocker = NOBODY;

  /**
   * A cook at work whenever the hours, breaks already out of them, say so within [from, to).
   *
   * @throws IllegalArgumentException if the horizon is empty
   */
  public CookTimeline(int from, int to, Presence hours) {
    if (from >= to) {
      throw new IllegalArgumentException("the horizon [" + from + ", " + to + ") is empty");
    }
    horizonStart = from;
    horizonEnd = to;
    int free = from;
    for (int i = 0; i < hours.stretches(); i++) {
      away(free, hours.opens(i));
      free = Math.max(free, hours.closes(i));
    }
    away(free, to);
    busy.keepAsBase();
  }

  private void away(int from, int to) {
    int end = Math.min(to, horizonEnd);
    if (from < end) {
      busy.add(from, end, HOURS, ALONE);
    }
  }

  /** The latest start, not after the moment, at which the cook is free for so long; or NONE. */
  public int latestStart(int notAfter, int duration) {
    return latestStartFor(notAfter, duration, ALONE);
  }

  /** As {@link #latestStart}, looking through work under the same tag that starts then. */
  public int latestStartFor(int notAfter, int duration, int tag) {
    int start = Math.min(notAfter, horizonEnd - duration);
    blocker = start < notAfter ? HOURS : NOBODY;
    while (duration > 0 && start >= horizonStart) {
      int clash = lastClash(start, start + duration, tag);
      if (clash < 0) {
        return start;
      }
      blocker = busy.owner[clash];
      boolean joins = tag != ALONE && busy.kind[clash] == tag && busy.from[clash] < start;
      start = joins ? busy.from[clash] : busy.from[clash] - duration;
    }
    if (start < horizonStart) {
      blocker = blocker == NOBODY ? HOURS : blocker;
      return NONE;
    }
    return start;
  }

  /** Whether the cook is at work and free at every minute of the stretch. */
  public boolean isFree(int from, int to) {
    return isFreeFor(from, to, ALONE);
  }

  /** As {@link #isFree}, looking through work under the same tag that starts when this does. */
  public boolean isFreeFor(int from, int to, int tag) {
    if (from >= to) {
      return true;
    }
    return from >= horizonStart && to <= horizonEnd && lastClash(from, to, tag) < 0;
  }

  /** The last booking to start that the stretch may not overlap; or -1. */
  private int lastClash(int from, int to, int tag) {
    int i = busy.lastStartingBefore(to);
    while (i >= 0 && busy.reach[i] > from) {
      boolean shared = tag != ALONE && busy.kind[i] == tag && busy.from[i] == from;
      if (busy.to[i] > from && !shared) {
        return i;
      }
      i--;
    }
    return -1;
  }

  /** Takes the cook over the stretch, free or not. */
  public void take(int from, int to, int owner) {
    busy.add(from, to, owner, ALONE);
  }

  /**
   * Takes the cook over the stretch for work that may overlap work that starts with it under the
   * same tag.
   *
   * @param tag zero or more
   */
  public void takeShared(int from, int to, int owner, int tag) {
    busy.add(from, to, owner, tag);
  }

  @Override
  public void clear() {
    busy.backToBase();
  }

  @Override
  public int mark() {
    return busy.mark();
  }

  @Override
  public void rollback(int mark) {
    busy.rollback(mark);
  }

  @Override
  public int blocker() {
    return blocker;
  }
}
