package ovenloom.solver.timeline;

/**
 * One oven's dial, over time: which bakes are inside at which setting, with the minutes the oven needs to change between
 * them.
 *
 * <p>A setting is a mark in a mode, by number. What is inside together has one setting; where a stage of a bake ends, the
 * dial is turned for all that stays inside. Only what goes in waits until the oven has reached its setting. Room on the
 * racks is another timeline's business.
 */
public final class DialTimeline implements Timeline {

  private final int horizonStart;
  private final int horizonEnd;
  private final OvenHeat heat;
  private final Presence open;
  private final Inside inside = new Inside();
  private final OvenDoor door = new OvenDoor(inside);
  private final OvenGaps gaps;
  private int blocker = NOBODY;

  /**
   * An oven that is empty throughout [from, to).
   *
   * @param open when it may be used
   * @param someone when somebody is there to switch it on
   * @throws IllegalArgumentException if the horizon is empty
   */
  public DialTimeline(int from, int to, OvenHeat heat, Presence open, Presence someone) {
    if (from >= to) {
      throw new IllegalArgumentException("the horizon [" + from + ", " + to + ") is empty");
    }
    horizonStart = from;
    horizonEnd = to;
    this.heat = heat;
    this.open = open.except(Integer.MIN_VALUE, from);
    gaps = new OvenGaps(inside, heat, this.open, someone);
  }

  /** The latest start, not after the moment, at which the bake fits beside those inside; or NONE. */
  public int latestStart(int notAfter, Bake bake) {
    int start = Math.min(notAfter, horizonEnd - bake.minutes());
    blocker = start < notAfter ? HOURS : NOBODY;
    int last = Integer.MAX_VALUE;
    while (start < last && start >= horizonStart) {
      last = start;
      start = lower(start, open.latestCovered(start, bake.minutes()), HOURS);
      for (int i = 0; i < inside.count && start >= horizonStart; i++) {
        start = lower(start, besides(start, bake, i), inside.owner[i]);
      }
      start = start < horizonStart ? start : lower(start, gaps.latestStart(start, bake), gaps.blocker());
      start = start < horizonStart ? start : uncrowded(start, bake);
    }
    if (start < horizonStart) {
      blocker = blocker == NOBODY ? HOURS : blocker;
      return NONE;
    }
    return start;
  }

  private int lower(int start, int found, int whose) {
    if (found < start) {
      blocker = whose;
    }
    return Math.min(start, found);
  }

  private int uncrowded(int start, Bake bake) {
    int whose = door.crowd(start, bake);
    return whose == NOBODY ? start : lower(start, start - 1, whose);
  }

  /** The latest start, not after this one, that gets on with one of the bakes inside; or lower. */
  private int besides(int from, Bake bake, int other) {
    int its = inside.start[other];
    Bake it = inside.bake[other];
    int start = from;
    for (int stage = 0; stage < bake.stages(); stage++) {
      for (int theirs = 0; theirs < it.stages(); theirs++) {
        start = apart(start, bake, stage, its, it, theirs);
      }
    }
    if (start + bake.minutes() <= its || its + it.minutes() <= start) {
      return start;
    }
    if (bake.avoids(it)) {
      return its - bake.minutes();
    }
    return door.staysShut(start, bake, other) ? start : start - 1;
  }

  /** Two stages at two settings are not inside together, and what goes in later finds the oven at its setting. */
  private int apart(int from, Bake bake, int stage, int its, Bake it, int theirs) {
    int mine = bake.setting(stage);
    int other = it.setting(theirs);
    if (mine == other) {
      return from;
    }
    int begin = from + bake.from(stage);
    int itBegins = its + it.from(theirs);
    int itsEnd = itBegins + it.minutes(theirs) + (stage == 0 ? heat.change(other, mine) : 0);
    int latestEnd = itBegins - (theirs == 0 ? heat.change(mine, other) : 0);
    boolean apart = begin >= itsEnd || begin + bake.minutes(stage) <= latestEnd;
    return apart ? from : latestEnd - bake.minutes(stage) - bake.from(stage);
  }

  /** Whether a setting is one that something inside has at some time. */
  public boolean uses(int setting) {
    return inside.isSet(setting);
  }

  /** Puts a bake in, fitting or not. */
  public void take(int from, Bake bake, int whose) {
    inside.add(from, bake, whose);
  }

  @Override
  public void clear() {
    inside.count = 0;
  }

  @Override
  public int mark() {
    return inside.count;
  }

  @Override
  public void rollback(int mark) {
    inside.count = mark;
  }

  @Override
  public int blocker() {
    return blocker;
  }
}
