package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * A pool with a capacity, over time: mixers, landing space, pans of one kind, watts on a circuit.
 *
 * <p>More may be taken than there is; then {@link #freeOver} is negative, and whoever took it
 * answers for it.
 */
public final class CountTimeline implements Timeline {

  private static final long EDGE_FIRST = 1L << 32;

  private final Profile profile;

  private int taken;
  private int[] from = new int[16];
  private int[] to = new int[16];
  private int[] demand = new int[16];
  private int[] owner = new int[16];
  private byte[] cuts = new byte[16];

  private boolean blocked;
  private boolean lookedForward;
  private int blockedAt;
  private int wanted;

  /**
   * A pool with this many free throughout [from, to).
   *
   * @throws IllegalArgumentException if the horizon is empty
   */
  public CountTimeline(int from, int to, int capacity) {
    profile = new Profile(from, to, capacity);
  }

  /**
   * Fewer by so many over [from, to), for good: hours it is shut, pieces lent out.
   *
   * @throws IllegalStateException if something has been taken already
   */
  public void reduce(int from, int to, int by) {
    if (taken > 0) {
      throw new IllegalStateException("a pool is reduced before anything is taken from it");
    }
    take(from, to, by, HOURS);
    taken = 0;
    profile.keepAsBase();
  }

  /** The latest start, not after the moment, at which so many are free for so long; or NONE. */
  public int latestStart(int notAfter, int duration, int demand) {
    int start = Math.min(notAfter, profile.end - duration);
    lookedForward = false;
    wanted = demand;
    blocked = start < notAfter;
    blockedAt = profile.end;
    if (duration <= 0) {
      return start < profile.start ? none() : start;
    }
    int piece = profile.pieceAt(start + duration - 1);
    while (piece >= 0) {
      if (profile.free[piece] < demand) {
        blocked = true;
        blockedAt = profile.at[piece];
        start = blockedAt - duration;
      } else if (profile.at[piece] <= start) {
        return start;
      }
      piece--;
    }
    return none();
  }

  /** The earliest start, not before the moment, at which so many are free for so long; or NONE. */
  public int earliestStart(int notBefore, int duration, int demand) {
    int start = Math.max(notBefore, profile.start);
    lookedForward = true;
    wanted = demand;
    blocked = start > notBefore;
    blockedAt = profile.end;
    if (duration <= 0) {
      return start > profile.end ? none() : start;
    }
    int piece = profile.pieceAt(start);
    while (piece < profile.pieces) {
      int end = profile.endOf(piece);
      if (profile.free[piece] < demand) {
        blocked = true;
        blockedAt = end - 1;
        start = end;
      } else if (end - duration >= start) {
        return start;
      }
      piece++;
    }
    return none();
  }

  private int none() {
    blocked = true;
    return NONE;
  }

  /** The fewest free at any minute of the stretch; none are free outside the horizon. */
  public int freeOver(int from, int to) {
    return profile.fewestOver(from, to);
  }

  /** The minutes of the horizon at which more is taken than there is. */
  public int minutesShort() {
    return profile.minutesBelowZero();
  }

  /** Whether the stretch lies inside the horizon and so many are free at each of its minutes. */
  public boolean fits(int from, int to, int demand) {
    return from >= to
        || (from >= profile.start && to <= profile.end && profile.fewestOver(from, to) >= demand);
  }

  /** Takes so many over the stretch, free or not; what lies outside the horizon is let go. */
  public void take(int from, int to, int demand, int owner) {
    makeRoom();
    int first = Math.max(from, profile.start);
    int end = Math.min(to, profile.end);
    this.from[taken] = first;
    this.to[taken] = end;
    this.demand[taken] = demand;
    this.owner[taken] = owner;
    if (first < end) {
      cuts[taken] = profile.take(first, end, demand);
    }
    taken++;
  }

  @Override
  public void clear() {
    taken = 0;
    profile.backToBase();
  }

  @Override
  public int mark() {
    return taken;
  }

  @Override
  public void rollback(int mark) {
    while (taken > mark) {
      taken--;
      if (from[taken] < to[taken]) {
        profile.giveBack(from[taken], to[taken], demand[taken], cuts[taken]);
      }
    }
  }

  /**
   * {@inheritDoc}
   *
   * <p>Of several reservations in the way, one that begins there (or, looking forward, ends there)
   * goes first, then the largest, then the newest. To be asked before anything else is taken.
   */
  @Override
  public int blocker() {
    if (!blocked) {
      return NOBODY;
    }
    boolean outside = blockedAt < profile.start || blockedAt >= profile.end;
    if (outside || profile.baseFreeAt(blockedAt) < wanted) {
      return HOURS;
    }
    int blocker = HOURS;
    long best = 0;
    for (int i = 0; i < taken; i++) {
      if (from[i] <= blockedAt && blockedAt < to[i] && demand[i] > 0) {
        boolean edge = lookedForward ? to[i] == blockedAt + 1 : from[i] == blockedAt;
        long claim = demand[i] + (edge ? EDGE_FIRST : 0);
        if (claim >= best) {
          best = claim;
          blocker = owner[i];
        }
      }
    }
    return blocker;
  }

  private void makeRoom() {
    if (taken == from.length) {
      int room = 2 * taken;
      from = Arrays.copyOf(from, room);
      to = Arrays.copyOf(to, room);
      demand = Arrays.copyOf(demand, room);
      owner = Arrays.copyOf(owner, room);
      cuts = Arrays.copyOf(cuts, room);
    }
  }
}
