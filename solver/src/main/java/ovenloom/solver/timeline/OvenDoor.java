package ovenloom.solver.timeline;

/**
 * An oven's door: who opens it when, and over which bake it must stay shut. What is put in or taken out at one minute
 * shares an opening; a moment in the middle of a bake has one of its own, for it may yet slip.
 */
final class OvenDoor {

  /** Openings by others that the minutes of a bake have room for. */
  private static final int OPENINGS = 2;

  private final Inside inside;

  OvenDoor(Inside inside) {
    this.inside = inside;
  }

  /** Whether neither a bake that goes in at the moment nor that one opens the door while the other's must stay shut. */
  boolean staysShut(int from, Bake bake, int other) {
    int its = inside.start[other];
    Bake it = inside.bake[other];
    return bake.opensNotWithin(from, its + it.shutFrom(), its + it.shutTo())
        && it.opensNotWithin(its, from + bake.shutFrom(), from + bake.shutTo());
  }

  /**
   * Who stands in the way of a bake that goes in at the moment, because over one of them the door would be opened too
   * often.
   */
  int crowd(int from, Bake bake) {
    int start = from + bake.load();
    int end = from + bake.minutes() - bake.unload();
    if (start < end && openings(start, end, -1) > OPENINGS) {
      return lastToOpen(start, end);
    }
    for (int i = 0; i < inside.count; i++) {
      int low = inside.start[i] + inside.bake[i].load();
      int high = inside.end(i) - inside.bake[i].unload();
      boolean meet = low < high && from < high && low < from + bake.minutes();
      if (meet && openings(low, high, i) + opened(from, bake, low, high, inside.count, i) > OPENINGS) {
        return inside.owner[i];
      }
    }
    return Timeline.NOBODY;
  }

  /** How often all but one open the door in a stretch. */
  private int openings(int low, int high, int except) {
    int seen = 0;
    for (int i = 0; i < inside.count; i++) {
      if (i != except) {
        seen += opened(inside.start[i], inside.bake[i], low, high, i, except);
      }
    }
    return seen;
  }

  private int opened(int its, Bake it, int low, int high, int before, int except) {
    int seen = 0;
    for (int opening = 0; opening < it.openings(); opening++) {
      int at = its + it.opensAt(opening);
      boolean open = opening < Bake.IN_AND_OUT
          && (isOpened(its, it, opening, at, low, high) || isOpenAnyway(at, low, high, before, except));
      if (!open && it.opensWithin(its, opening, low, high)) {
        seen++;
      }
    }
    return seen;
  }

  private boolean isOpenAnyway(int at, int low, int high, int before, int except) {
    for (int i = 0; i < before; i++) {
      Bake it = inside.bake[i];
      if (i != except && isOpened(inside.start[i], it, Bake.IN_AND_OUT, at, low, high)) {
        return true;
      }
    }
    return false;
  }

  /** Whether one of the first few openings of a bake starts at the minute and falls into the stretch. */
  private static boolean isOpened(int its, Bake it, int few, int at, int low, int high) {
    for (int opening = 0; opening < few; opening++) {
      if (its + it.opensAt(opening) == at && it.opensWithin(its, opening, low, high)) {
        return true;
      }
    }
    return false;
  }

  private int lastToOpen(int low, int high) {
    int last = 0;
    int latest = Integer.MIN_VALUE;
    for (int i = 0; i < inside.count; i++) {
      for (int opening = 0; opening < inside.bake[i].openings(); opening++) {
        int at = inside.start[i] + inside.bake[i].opensAt(opening);
        if (inside.bake[i].opensWithin(inside.start[i], opening, low, high) && at > latest) {
          latest = at;
          last = i;
        }
      }
    }
    return inside.owner[last];
  }
}
