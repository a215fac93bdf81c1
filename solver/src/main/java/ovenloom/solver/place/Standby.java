package ovenloom.solver.place;

import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Temperature;
import ovenloom.solver.timeline.Presence;

/** What an oven does while it stands empty between two uses of one day: held at the next mark, or off for a while. */
final class Standby {

  /** Instead of a preheat, where the oven is held. */
  static final int HELD = -1;

  /** In a shorter gap an oven is held, minutes. */
  private static final int WORTH_SWITCHING_OFF = 30;

  private Standby() {}

  /**
   * The preheat of an oven that is switched off after a use at one temperature and on again in time for the next at another;
   * or HELD. Off is what uses no more energy, if someone is there to switch it on.
   */
  static int preheat(Oven oven, Presence there, Temperature last, Temperature next, int from, int to) {
    int gap = to - from;
    if (gap < WORTH_SWITCHING_OFF) {
      return HELD;
    }
    int preheat = oven.warmth().preheat(last, next, gap);
    boolean off = preheat <= gap
        && there.openAt(to - preheat)
        && (long) preheat * oven.heating().watts() <= held(oven, last, next, gap);
    return off ? preheat : HELD;
  }

  /** Watt minutes. */
  private static long held(Oven oven, Temperature last, Temperature next, int gap) {
    int change = oven.warmth().minutes(last, next);
    boolean warms = next.compareTo(last) > 0;
    return (warms ? (long) change * oven.heating().watts() : 0)
        + (long) (gap - change) * oven.holding().watts();
  }
}
