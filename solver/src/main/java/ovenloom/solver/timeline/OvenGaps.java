package ovenloom.solver.timeline;

/**
 * The gaps in which an oven stands empty: each morning it is cold and is warmed anew, with someone there to switch it on;
 * and it is on in its hours only.
 */
final class OvenGaps {

  /** At this minute of a day an empty oven is cold. */
  private static final int MORNING = 4 * 60;

  private static final int DAY = 24 * 60;

  private final Inside inside;
  private final OvenHeat heat;
  private final Presence open;
  private final Presence someone;
  private int blocker = Timeline.HOURS;

  OvenGaps(Inside inside, OvenHeat heat, Presence open, Presence someone) {
    this.inside = inside;
    this.heat = heat;
    this.open = open;
    this.someone = someone;
  }

  /** The latest start, not after the moment, at which the oven is warm for a bake and the next one too; or lower. */
  int latestStart(int notAfter, Bake bake) {
    blocker = Timeline.HOURS;
    int start = warm(notAfter, bake);
    return start < notAfter ? start : leavingTime(start, bake);
  }

  /** What stood in the way of the last search, if something did. */
  int blocker() {
    return blocker;
  }

  private int warm(int from, Bake bake) {
    int last = inside.lastOutOf(from);
    if (last < 0) {
      return switchedOn(from, bake);
    }
    int empty = inside.end(last);
    if (empty >= from) {
      return from;
    }
    int cold = morningFrom(empty);
    if (cold >= from) {
      return isOnInHours(inside.bake[last], bake, empty, from) ? from : from - 1;
    }
    if (from - heat.fromRoom(bake.setting(0)) < empty) {
      blocker = inside.owner[last];
      return cold;
    }
    return Math.max(switchedOn(from, bake), cold);
  }

  /** The latest start, not after the moment, after a preheat from room temperature. */
  private int switchedOn(int from, Bake bake) {
    int preheat = heat.fromRoom(bake.setting(0));
    int on = from - preheat;
    int latest = someone.latestMoment(open.covers(on, from) ? on : on - 1);
    return latest == Timeline.NONE ? latest : latest + preheat;
  }

  private boolean isOnInHours(Bake before, Bake next, int out, int to) {
    if (before.minutesOn() < before.minutes()) {
      return isSwitchedOnAgain(before, next, out - before.minutes() + before.minutesOn(), to);
    }
    return open.covers(out, to)
        || open.covers(to - heat.onBefore(before.lastOn(), next.setting(0), out, to), to);
  }

  private boolean isSwitchedOnAgain(Bake before, Bake next, int off, int to) {
    int preheat = morningFrom(off) < to ? heat.fromRoom(next.setting(0))
        : heat.preheat(before.lastOn(), next.setting(0), to - off);
    return someone.openAt(to - preheat) && open.covers(to - preheat, to);
  }

  /** The next bake needs a warm oven as well. */
  private int leavingTime(int from, Bake bake) {
    int end = from + bake.minutes();
    for (int i = 0; i < inside.count; i++) {
      int next = inside.start[i];
      if (next > end && isEmptyBetween(end, next)) {
        int preheat = heat.fromRoom(inside.bake[i].setting(0));
        boolean cold = morningFrom(end) < next;
        if (cold && next - end < preheat) {
          blocker = inside.owner[i];
          return next - preheat - bake.minutes();
        }
        if (!cold && !isOnInHours(bake, inside.bake[i], end, next)) {
          return from - 1;
        }
      }
    }
    return from;
  }

  private boolean isEmptyBetween(int from, int to) {
    for (int i = 0; i < inside.count; i++) {
      if (inside.start[i] < to && inside.end(i) > from) {
        return false;
      }
    }
    return true;
  }

  /** The first morning, not before the moment. */
  private static int morningFrom(int moment) {
    return Math.ceilDiv(moment - MORNING, DAY) * DAY + MORNING;
  }
}
