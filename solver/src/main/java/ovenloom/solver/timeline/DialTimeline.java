package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * One oven's dial and door, over time: which bakes are inside at which setting, with the minutes the
 * oven needs to change between them, and who opens the door when.
 *
 * <p>A setting is a mark in a mode, by number. Room on the racks is another timeline's business.
 */
public final class DialTimeline implements Timeline {

  /** Openings by others that the minutes of a bake have room for. */
  private static final int OPENINGS = 2;

  /** At this minute of a day an empty oven is cold. */
  private static final int MORNING = 4 * 60;

  private static final int DAY = 24 * 60;

  private final int horizonStart;
  private final int horizonEnd;
  private final int[][] change;
  private final int[] fromRoom;
  private final Presence open;
  private final Presence someone;

  private int count;
  private int[] start = new int[16];
  private Bake[] inside = new Bake[16];
  private int[] owner = new int[16];
  private int blocker = NOBODY;

  /**
   * An oven that is empty throughout [from, to).
   *
   * @param change minutes from one setting to another
   * @param fromRoom minutes from room temperature to a setting
   * @param open when it may be used
   * @param someone when somebody is there to switch it on
   * @throws IllegalArgumentException if the horizon is empty
   */
  public DialTimeline(int from, int to, int[][] change, int[] fromRoom, Presence open, Presence someone) {
    if (from >= to) {
      throw new IllegalArgumentException("the horizon [" + from + ", " + to + ") is empty");
    }
    horizonStart = from;
    horizonEnd = to;
    this.change = Arrays.stream(change).map(int[]::clone).toArray(int[][]::new);
    this.fromRoom = fromRoom.clone();
    this.open = open;
    this.someone = someone;
  }

  /** The latest start, not after the moment, at which the bake fits beside those inside; or NONE. */
  public int latestStart(int notAfter, Bake bake) {
    int from = Math.min(notAfter, horizonEnd - bake.minutes());
    blocker = from < notAfter ? HOURS : NOBODY;
    int last = Integer.MAX_VALUE;
    while (from < last) {
      last = from;
      from = beforeClosing(from, bake);
      for (int i = 0; i < count && from >= horizonStart; i++) {
        int earlier = besides(from, bake, i);
        if (earlier < from) {
          from = earlier;
          blocker = owner[i];
        }
      }
      if (from >= horizonStart) {
        from = preheated(from, bake);
      }
      if (from >= horizonStart && tooManyOpenings(from, bake)) {
        from--;
      }
      if (from < horizonStart) {
        blocker = blocker == NOBODY ? HOURS : blocker;
        return NONE;
      }
    }
    return from;
  }

  /** Whether a setting is one that something inside has at some time. */
  public boolean uses(int setting) {
    for (int i = 0; i < count; i++) {
      for (int stage = 0; stage < inside[i].stages(); stage++) {
        if (inside[i].setting(stage) == setting) {
          return true;
        }
      }
    }
    return false;
  }

  /** Puts a bake in, fitting or not. */
  public void take(int from, Bake bake, int whose) {
    if (count == start.length) {
      start = Arrays.copyOf(start, 2 * count);
      inside = Arrays.copyOf(inside, 2 * count);
      owner = Arrays.copyOf(owner, 2 * count);
    }
    start[count] = from;
    inside[count] = bake;
    owner[count++] = whose;
  }

  private int beforeClosing(int from, Bake bake) {
    int start = open.latestCovered(from, bake.minutes());
    if (start < from) {
      blocker = HOURS;
    }
    return start;
  }

  /** The latest start, not after this one, that gets on with one of the bakes inside; any below the horizon for none. */
  private int besides(int from, Bake bake, int other) {
    int its = start[other];
    Bake it = inside[other];
    int start = from;
    for (int stage = 0; stage < bake.stages(); stage++) {
      for (int theirs = 0; theirs < it.stages(); theirs++) {
        start = Math.min(start, apart(start, bake, stage, its, it, theirs));
      }
    }
    if (start + bake.minutes() <= its || its + it.minutes() <= start) {
      return start;
    }
    if (bake.avoids(it)) {
      return its - bake.minutes();
    }
    start = withOneHandOnTheDial(start, bake, its, it);
    return doorStaysShut(start, bake, its, it) ? start : start - 1;
  }

  private int apart(int from, Bake bake, int stage, int its, Bake it, int theirs) {
    int mine = bake.setting(stage);
    int other = it.setting(theirs);
    int begin = from + bake.from(stage);
    int end = begin + bake.minutes(stage);
    int itBegins = its + it.from(theirs);
    int itEnds = itBegins + it.minutes(theirs);
    boolean overlap = begin < itEnds && itBegins < end;
    if (overlap && mine == other) {
      return from;
    }
    boolean after = begin >= itEnds && begin - itEnds >= gap(itEnds, begin, other, mine);
    boolean before = end <= itBegins && itBegins - end >= gap(end, itBegins, mine, other);
    if (after || before) {
      return from;
    }
    return Math.min(from - 1,
        itBegins - gap(end, itBegins, mine, other) - bake.from(stage) - bake.minutes(stage));
  }

  private int gap(int from, int to, int one, int other) {
    return holdsAMorning(from, to) ? Math.max(change[one][other], fromRoom[other]) : change[one][other];
  }

  /** A stage changes only when all that is inside changes with it. */
  private int withOneHandOnTheDial(int from, Bake bake, int its, Bake it) {
    for (int stage = 1; stage < bake.stages(); stage++) {
      int turn = from + bake.from(stage);
      if (its < turn && turn < its + it.minutes() && !it.turnsAt(turn - its)) {
        return Math.min(from - 1, its - bake.from(stage));
      }
    }
    for (int stage = 1; stage < it.stages(); stage++) {
      int turn = its + it.from(stage);
      if (from < turn && turn < from + bake.minutes() && !bake.turnsAt(turn - from)) {
        return turn - bake.minutes();
      }
    }
    return from;
  }

  private static boolean doorStaysShut(int from, Bake bake, int its, Bake it) {
    return bake.opensNotWithin(from, its + it.shutFrom(), its + it.shutTo())
        && it.opensNotWithin(its, from + bake.shutFrom(), from + bake.shutTo());
  }

  /** An oven that is cold is switched on by someone, in time, within its hours. */
  private int preheated(int from, Bake bake) {
    int before = lastEndBefore(from);
    if (before != NONE && (from <= before || !holdsAMorning(before, from))) {
      return from;
    }
    int preheat = fromRoom[bake.setting(0)];
    int on = from - preheat;
    int latest = open.covers(on, from) ? someone.latestMoment(on)
        : Math.min(on - 1, someone.latestMoment(on - 1));
    if (latest < on) {
      blocker = HOURS;
    }
    return latest < horizonStart ? NONE : latest + preheat;
  }

  private int lastEndBefore(int moment) {
    int last = NONE;
    for (int i = 0; i < count; i++) {
      if (start[i] <= moment) {
        last = Math.max(last, start[i] + inside[i].minutes());
      }
    }
    return last;
  }

  private static boolean holdsAMorning(int from, int to) {
    int next = Math.floorDiv(from - MORNING + DAY - 1, DAY) * DAY + MORNING;
    return next < to;
  }

  private boolean tooManyOpenings(int from, Bake bake) {
    if (openingsOf(from, bake, from, bake, NOBODY) > OPENINGS) {
      return true;
    }
    for (int i = 0; i < count; i++) {
      if (openingsOf(start[i], inside[i], from, bake, i) > OPENINGS) {
        return true;
      }
    }
    return false;
  }

  /** Openings a bake sees by the others inside and, unless it is the new one itself, by the new one. */
  private int openingsOf(int its, Bake it, int from, Bake bake, int which) {
    int low = its + it.load();
    int high = its + it.minutes() - it.unload();
    if (which != NOBODY && (from >= high || from + bake.minutes() <= low)) {
      return 0;
    }
    int seen = 0;
    for (int i = 0; i < count; i++) {
      if (i != which) {
        seen += opened(start[i], inside[i], low, high, i, which);
      }
    }
    return which == NOBODY ? seen : seen + opened(from, bake, low, high, count, which);
  }

  private int opened(int its, Bake it, int low, int high, int upTo, int which) {
    int seen = 0;
    for (int opening = 0; opening < it.openings(); opening++) {
      int at = its + it.opensAt(opening);
      boolean inside = at < high && at + it.opensFor(opening) > low;
      if (inside && !seenAlready(at, upTo, which)) {
        seen++;
      }
    }
    return seen;
  }

  private boolean seenAlready(int at, int upTo, int which) {
    for (int i = 0; i < upTo; i++) {
      for (int opening = 0; i != which && opening < inside[i].openings(); opening++) {
        if (start[i] + inside[i].opensAt(opening) == at) {
          return true;
        }
      }
    }
    return false;
  }

  @Override
  public void clear() {
    count = 0;
  }

  @Override
  public int mark() {
    return count;
  }

  @Override
  public void rollback(int mark) {
    count = mark;
  }

  @Override
  public int blocker() {
    return blocker;
  }
}
