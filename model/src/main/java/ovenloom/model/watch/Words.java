package ovenloom.model.watch;

import ovenloom.model.measure.Temperature;

/** Minutes and degrees in words. */
final class Words {

  private static final int HOUR = 60;

  private Words() {}

  /** {@code 45 min}, {@code 2 h}, {@code 2 h 15 min}. */
  static String minutes(int minutes) {
    if (minutes < HOUR) {
      return minutes + " min";
    }
    return minutes / HOUR + " h" + (minutes % HOUR == 0 ? "" : " " + minutes % HOUR + " min");
  }

  /** {@code 57 C}. */
  static String degrees(Temperature temperature) {
    return Math.round(temperature.inCelsius()) + " C";
  }
}
