package ovenloom.model.safety;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Temperature;

/**
 * How fast cooked food must cool through some degrees. Where a code asks for two stages, there are two of these, and the second
 * one counts from where the first does.
 *
 * @param from where the clock starts
 * @param to where it stops
 * @param minutes at most
 */
public record CoolDown(Temperature from, Temperature to, int minutes, Source source) {

  /**
   * What keeps food from passing.
   *
   * @param minutes that it took; {@link Integer#MAX_VALUE} if it never got there
   */
  public record TooSlow(CoolDown limit, int minutes) {}

  /** Refuses to cool upwards, or in no time. */
  public CoolDown {
    if (from.compareTo(to) <= 0 || minutes <= 0) {
      throw new IllegalArgumentException(from + " to " + to + " in " + minutes + " min");
    }
  }

  /**
   * What is wrong with how food cools, or null.
   *
   * @param celsius its warmest part, minute by minute
   * @param minute from which on it cools
   */
  public @Nullable TooSlow check(double[] celsius, int minute) {
    int start = until(celsius, minute, from);
    int end = until(celsius, start, to);
    int took = end == celsius.length ? Integer.MAX_VALUE : end - start;
    return took > minutes ? new TooSlow(this, took) : null;
  }

  /** The first minute, not before one, at which it is no warmer than that; their number if it never is. */
  private static int until(double[] celsius, int from, Temperature cool) {
    int minute = from;
    while (minute < celsius.length && celsius[minute] > cool.inCelsius()) {
      minute++;
    }
    return minute;
  }
}
