package ovenloom.solver.timeline;

/**
 * An oven that warms by 10 K a minute and is half as far above a room of 20 C after 14 minutes. It is held in a gap of less
 * than 30 minutes, and off in a longer one for all but the preheat from the room.
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
    return fromRoom(one) <= fromRoom(other) ? fromRoom(other) - fromRoom(one) : 14;
  }

  @Override
  public int fromRoom(int setting) {
    return setting == MILD ? 10 : 20;
  }

  @Override
  public int onBefore(int last, int next, int from, int to) {
    return to - from < 30 ? to - from : fromRoom(next);
  }
}
