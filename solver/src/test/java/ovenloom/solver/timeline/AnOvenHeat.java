package ovenloom.solver.timeline;

/**
 * An oven that warms by 10 K a minute and is half as far above a room of 20 C after 14 minutes. It is held in a gap of less
 * than 30 minutes, and off in a longer one for all but the preheat from the room, if nothing is in there.
 */
record AnOvenHeat() implements OvenHeat {

  /** 120 C. */
  static final int MILD = 0;

  /** 220 C. */
  static final int HOT = 1;

  /** 220 C. */
  static final int HOT_WITH_THE_FAN = 2;

  @Override
  public int change(int one, int other) {
    if (other == Bake.OFF || one == Bake.OFF) {
      return other == Bake.OFF ? 0 : fromRoom(other);
    }
    return fromRoom(one) <= fromRoom(other) ? fromRoom(other) - fromRoom(one) : 14;
  }

  @Override
  public int fromRoom(int setting) {
    return setting == MILD ? 10 : 20;
  }

  /** Half of what it takes from the room, soon after. */
  @Override
  public int preheat(int last, int next, int minutes) {
    return minutes < 30 ? fromRoom(next) / 2 : fromRoom(next);
  }

  @Override
  public int onBefore(int last, int next, int from, int to) {
    return to - from < 30 ? to - from : fromRoom(next);
  }
}
