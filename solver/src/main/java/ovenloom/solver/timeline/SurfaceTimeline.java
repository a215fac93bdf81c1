package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * One rack or shelf, over time: which vessels stand on it when, and when it is closed.
 *
 * <p>Vessels fit if at every moment the ones standing there fit together; they may be slid when the
 * set changes. Closed, as when something tall on the rack below reaches up through it, nothing
 * stands on it; it may be closed by several at once. Height is the caller's business.
 */
public final class SurfaceTimeline implements Timeline {

  private static final int CLOSED = -1;

  private final int horizonStart;
  private final int horizonEnd;
  private final RackFit fit;
  private final Bookings standing = new Bookings();
  private int[] together = new int[16];
  private int blocker = NOBODY;

  /**
   * An empty surface over [from, to).
   *
   * @throws IllegalArgumentException if the horizon is empty
   */
  public SurfaceTimeline(int from, int to, RackFit fit) {
    if (from >= to) {
      throw new IllegalArgumentException("the horizon [" + from + ", " + to + ") is empty");
    }
    horizonStart = from;
    horizonEnd = to;
    this.fit = fit;
  }

  /** Makes what has been taken and closed so far the state that {@link #clear} goes back to. */
  public void keep() {
    standing.keepAsBase();
  }

  /** Whether the first so many of these shapes can stand here all through the stretch. */
  public boolean fits(int from, int to, int[] shapes, int count) {
    if (from >= to) {
      return true;
    }
    return from >= horizonStart
        && to <= horizonEnd
        && fit.fits(shapes, count)
        && lastClash(from, to, shapes, count) < 0;
  }

  /** Whether one of this shape can stand here while nothing else does. */
  public boolean admits(int shape) {
    return fit.fits(new int[]{shape}, 1);
  }

  /** Whether nothing stands here all through the stretch, so that it may be closed. */
  public boolean isEmpty(int from, int to) {
    if (from >= to) {
      return true;
    }
    return from >= horizonStart && to <= horizonEnd && lastStanding(from, to) < 0;
  }

  /** The latest start, not after the moment, at which these shapes fit for so long; or NONE. */
  public int latestStart(int notAfter, int duration, int[] shapes, int count) {
    int start = Math.min(notAfter, horizonEnd - duration);
    blocker = start < notAfter ? HOURS : NOBODY;
    if (duration > 0 && !fit.fits(shapes, count)) {
      blocker = HOURS;
      return NONE;
    }
    while (duration > 0 && start >= horizonStart) {
      int end = start + duration;
      int clash = lastClash(start, end, shapes, count);
      if (clash < 0) {
        return start;
      }
      blocker = standing.owner[clash];
      start = standing.from[clash] - duration;
    }
    if (start < horizonStart) {
      blocker = blocker == NOBODY ? HOURS : blocker;
      return NONE;
    }
    return start;
  }

  /**
   * The booking whose start, the last such, makes a set that does not fit; or -1. Sets only grow
   * when something starts, so nothing else needs a look.
   */
  private int lastClash(int from, int to, int[] shapes, int count) {
    int looked = to;
    int i = standing.lastStartingBefore(to);
    while (i >= 0 && standing.reach[i] > from && looked > from) {
      if (standing.to[i] > from && standing.from[i] < looked) {
        looked = standing.from[i];
        if (!fitsAt(Math.max(from, looked), shapes, count)) {
          return i;
        }
      }
      i--;
    }
    return -1;
  }

  private boolean fitsAt(int moment, int[] shapes, int count) {
    int found = 0;
    int i = standing.lastStartingBefore(moment + 1);
    while (i >= 0 && standing.reach[i] > moment) {
      if (standing.to[i] > moment) {
        if (standing.kind[i] == CLOSED) {
          return false;
        }
        found = with(found, standing.kind[i]);
      }
      i--;
    }
    for (int own = 0; own < count; own++) {
      found = with(found, shapes[own]);
    }
    return fit.fits(together, found);
  }

  private int with(int found, int shape) {
    if (found == together.length) {
      together = Arrays.copyOf(together, 2 * found);
    }
    together[found] = shape;
    return found + 1;
  }

  private int lastStanding(int from, int to) {
    int i = standing.lastStartingBefore(to);
    while (i >= 0 && standing.reach[i] > from) {
      if (standing.to[i] > from && standing.kind[i] != CLOSED) {
        return i;
      }
      i--;
    }
    return -1;
  }

  /** Sets the first so many of these shapes down over the stretch, fit or not. */
  public void take(int from, int to, int[] shapes, int count, int owner) {
    for (int i = 0; i < count; i++) {
      standing.add(from, to, owner, shapes[i]);
    }
  }

  /** Closes it over the stretch, empty or not. */
  public void close(int from, int to, int owner) {
    standing.add(from, to, owner, CLOSED);
  }

  @Override
  public void clear() {
    standing.backToBase();
  }

  @Override
  public int mark() {
    return standing.mark();
  }

  @Override
  public void rollback(int mark) {
    standing.rollback(mark);
  }

  @Override
  public int blocker() {
    return blocker;
  }
}
