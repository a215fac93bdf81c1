package ovenloom.model.safety;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Temperature;

/**
 * How fast cooked food must cool: through the worst degrees quickly, and all the way in a time of which the first is a part.
 *
 * @param from where the clock starts
 * @param middle to be reached first
 * @param first minutes from the start to the middle
 * @param to where the clock stops
 * @param all minutes from the start to the end
 */
public record CoolDown(Temperature from, Temperature middle, int first, Temperature to, int all,
    Source source) {

  /** What keeps food from passing: minutes too long to a temperature. */
  public record TooSlow(Temperature to, int minutes, int limit) {}

  /** Refuses temperatures and times that do not follow one another. */
  public CoolDown {
    if (from.compareTo(middle) <= 0 || middle.compareTo(to) <= 0 || first >= all || first <= 0) {
      throw new IllegalArgumentException(
          from + " to " + middle + " in " + first + ", to " + to + " in " + all);
    }
  }

  /**
   * What is wrong with how food cools, or null.
   *
   * @param celsius its warmest part, minute by minute; the last of them goes on for ever
   * @param minute from which on it cools
   */
  public @Nullable TooSlow check(double[] celsius, int minute) {
    int start = until(celsius, minute, from);
    TooSlow early = tooSlow(celsius, start, middle, first);
    return early != null ? early : tooSlow(celsius, start, to, all);
  }

  private static @Nullable TooSlow tooSlow(
      double[] celsius, int start, Temperature to, int limit) {
    int minutes = until(celsius, start, to) - start;
    return minutes > limit ? new TooSlow(to, minutes, limit) : null;
  }

  /** The first minute, not before one, at which it is no warmer than that; beyond the last if it never is. */
  private static int until(double[] celsius, int from, Temperature cool) {
    int minute = from;
    while (minute < celsius.length && celsius[minute] > cool.inCelsius()) {
      minute++;
    }
    return minute < celsius.length ? minute : Integer.MAX_VALUE;
  }
}
