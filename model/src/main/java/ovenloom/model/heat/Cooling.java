package ovenloom.model.heat;

import java.util.Arrays;

/**
 * How the mean of food comes down to what surrounds it once the first minutes are over: by the same share of what is left each
 * minute (the first term of the series of the heat equation), and by more the more vapour its surface gives off. What is no warmer
 * than its surroundings is taken to give off none: that it may get colder than the air (its wet bulb) is left out.
 */
public final class Cooling {

  /** So much warmer than what surrounds it is food in the first row, K; what is hotter cools as there. */
  private static final double HOTTEST = 120;

  /** From one row of the table to the next the difference shrinks to {@code e^-STEP} of itself. */
  private static final double STEP = 0.1;

  /** Down to about a kelvin. */
  private static final int ROWS = 49;

  private final double air;

  /** By which share of what is left a difference shrinks each minute where there is no vapour. */
  private final double still;

  /** By row, from when the food was hottest; the last rows go on for ever. */
  private final double[] minutes;

  private Cooling(double air, double still, double[] minutes) {
    this.air = air;
    this.still = still;
    this.minutes = minutes;
  }

  /** Of food in surroundings. */
  public static Cooling of(Body body, Surroundings there) {
    double air = there.air().inCelsius();
    double[] minutes = new double[ROWS];
    double still = body.coolingRate(there.coefficient());
    for (int row = 1; row < ROWS; row++) {
      double between = air + excess(row - 0.5);
      double rate = there.wetness() == 0 ? still : body.coolingRate(there.takes(between));
      minutes[row] = minutes[row - 1] + STEP / rate;
    }
    return new Cooling(air, still, minutes);
  }

  /** By which share of what is left a difference to the air shrinks, for each minute, whatever the temperature. */
  public static Cooling steady(double air, double rate) {
    double[] minutes = new double[ROWS];
    Arrays.setAll(minutes, row -> row * STEP / rate);
    return new Cooling(air, rate, minutes);
  }

  private static double excess(double row) {
    return HOTTEST * StrictMath.exp(-STEP * row);
  }

  /** How warm food is after some minutes, C; what is colder than the air gives off no vapour. */
  public double after(double minutes, double now) {
    double excess = now - air;
    return excess <= 0 ? air + excess * StrictMath.exp(-still * minutes)
        : air + excess(row(reached(excess) + minutes));
  }

  /** Minutes until food has got down to a temperature, C; infinite where it never does. */
  public double minutesTo(double now, double to) {
    if (now <= to) {
      return 0;
    }
    return to <= air ? Double.POSITIVE_INFINITY : reached(to - air) - reached(now - air);
  }

  /** When it was only so much warmer than the air, in minutes of the table; below 0 where it was hotter than any row. */
  private double reached(double excess) {
    double row = StrictMath.log(HOTTEST / excess) / STEP;
    int above = Math.clamp((int) row, 0, ROWS - 2);
    return minutes[above] + (row - above) * (minutes[above + 1] - minutes[above]);
  }

  private double row(double when) {
    int found = Arrays.binarySearch(minutes, when);
    int above = Math.clamp(found >= 0 ? found : -found - 2, 0, ROWS - 2);
    return above + (when - minutes[above]) / (minutes[above + 1] - minutes[above]);
  }
}
