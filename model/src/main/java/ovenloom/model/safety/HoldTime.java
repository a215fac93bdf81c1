package ovenloom.model.safety;

import java.util.List;
import ovenloom.model.measure.Temperature;

/**
 * How long food is to be as hot as this all the way through: the hotter, the shorter.
 *
 * @param rows from the coolest to the hottest, each with less time
 */
public record HoldTime(List<Row> rows, Source source) {

  /**
   * One line of the table.
   *
   * @param seconds 0: it is enough to get there
   */
  public record Row(Temperature temperature, int seconds) {}

  private static final double SECONDS_A_MINUTE = 60;
  private static final double LOOK_EVERY = 0.1;

  /** Refuses a table without rows, or in which it does not take less time where it is hotter. */
  public HoldTime {
    rows = List.copyOf(rows);
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).temperature().compareTo(rows.get(i - 1).temperature()) <= 0
          || rows.get(i).seconds() >= rows.get(i - 1).seconds()) {
        throw new IllegalArgumentException("row " + i + " is not hotter and shorter than the one before");
      }
    }
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("there is no row");
    }
  }

  /**
   * Seconds for which food must be as hot as this: between two rows as their logarithms go, by the lower of two rows if the
   * higher asks for none, and for ever below the first.
   */
  public double seconds(double celsius) {
    if (celsius < rows.getFirst().temperature().inCelsius()) {
      return Double.POSITIVE_INFINITY;
    }
    for (int i = 1; i < rows.size(); i++) {
      Row low = rows.get(i - 1);
      Row high = rows.get(i);
      if (celsius < high.temperature().inCelsius()) {
        return high.seconds() == 0 ? low.seconds() : between(low, high, celsius);
      }
    }
    return rows.getLast().seconds();
  }

  private static double between(Row low, Row high, double celsius) {
    double way = (celsius - low.temperature().inCelsius())
        / high.temperature().kelvinsAbove(low.temperature());
    return low.seconds() * Math.pow(high.seconds() / (double) low.seconds(), way);
  }

  /**
   * Whether food was hot enough for long enough, without a break, at one temperature of the table or between.
   *
   * @param celsius its coolest part, minute by minute
   */
  public boolean isMet(double[] celsius) {
    double hottest = Double.NEGATIVE_INFINITY;
    for (double each : celsius) {
      hottest = Math.max(hottest, each);
    }
    for (double held = hottest; held >= rows.getFirst().temperature().inCelsius(); held -= LOOK_EVERY) {
      if (longest(celsius, held) >= seconds(held)) {
        return true;
      }
    }
    double first = rows.getFirst().temperature().inCelsius();
    return hottest >= first && longest(celsius, first) >= rows.getFirst().seconds();
  }

  /** Whether a minute at a temperature is enough, C. */
  public boolean isMetInAMinute(double celsius) {
    return celsius >= rows.getFirst().temperature().inCelsius() && seconds(celsius) <= SECONDS_A_MINUTE;
  }

  /** Seconds for which it was at least so hot without a break, taking it to go straight from minute to minute. */
  private static double longest(double[] celsius, double least) {
    double longest = 0;
    double now = 0;
    for (int i = 1; i < celsius.length; i++) {
      double above = share(celsius[i - 1], celsius[i], least) * SECONDS_A_MINUTE;
      now = celsius[i - 1] >= least ? now + above : above;
      longest = Math.max(longest, now);
      now = celsius[i] >= least ? now : 0;
    }
    return longest;
  }

  /** How much of a minute it is at least so hot. */
  private static double share(double from, double to, double least) {
    if (from >= least && to >= least) {
      return 1;
    }
    if (from < least && to < least) {
      return 0;
    }
    return (Math.max(from, to) - least) / Math.abs(to - from);
  }
}
