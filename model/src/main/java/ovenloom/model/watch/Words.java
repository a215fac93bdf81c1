package ovenloom.model.watch;

import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Temperature;

/** Minutes, weights and degrees in words. */
final class Words {

  private static final int HOUR = 60;
  private static final double MILLIGRAMS_A_GRAM = 1000;

  private Words() {}

  /** {@code 45 min}, {@code 2 h}, {@code 2 h 15 min}. */
  static String minutes(int minutes) {
    if (minutes < HOUR) {
      return minutes + " min";
    }
    return minutes / HOUR + " h" + (minutes % HOUR == 0 ? "" : " " + minutes % HOUR + " min");
  }

  /** {@code 4.536 kg}. */
  static String kilograms(Mass mass) {
    return Mass.grams(Math.rint(mass.milligrams() / MILLIGRAMS_A_GRAM)).written();
  }

  /** {@code 57 C}. */
  static String degrees(Temperature temperature) {
    return Math.round(temperature.inCelsius()) + " C";
  }
}
