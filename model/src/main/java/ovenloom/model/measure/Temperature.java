package ovenloom.model.measure;

/**
 * How hot something is: a point on the scale, not a difference. Kept to a thousandth of a kelvin,
 * which is finer than a hundredth of a degree on either scale. A difference is a {@code double} of
 * kelvins: 25 F more is 13.9 K more, and never 32 degrees off.
 *
 * @param milliKelvin thousandths of a kelvin above absolute zero
 */
public record Temperature(long milliKelvin) implements Comparable<Temperature> {

  private static final long WATER_FREEZES = 273_150;
  private static final double ABSOLUTE_ZERO_F = -459.67;
  private static final Reader<Setting> READER = new Reader<>("a temperature like \"74 C\" or \"165 F\"",
      s -> Degrees.read(s, -100, 600), Setting::written,
      texts -> Guesses.spelling(Guesses.ending(texts, "C", "F"), Degrees.SCALES));

  /** Refuses what is below absolute zero. */
  public Temperature {
    if (milliKelvin < 0) {
      throw new IllegalArgumentException(milliKelvin + " mK is below absolute zero");
    }
  }

  /**
   * Reads a temperature with its unit, from a blast freezer's to a wood-fired oven's (-100 C to
   * 600 C): {@code 165 F}, {@code 74 °C}, {@code -18 C}.
   */
  public static Parsed<Temperature> read(String text) {
    return READER.read(text).map(Setting::temperature);
  }

  /** So many degrees Celsius, to the nearest thousandth of a kelvin. */
  public static Temperature celsius(double degrees) {
    return new Temperature(Numerals.nearest(degrees * 1000) + WATER_FREEZES);
  }

  /** So many degrees Fahrenheit, to the nearest thousandth of a kelvin. */
  public static Temperature fahrenheit(double degrees) {
    return new Temperature(Numerals.nearest((degrees - ABSOLUTE_ZERO_F) * 5000 / 9));
  }

  /** Degrees Celsius. */
  public double inCelsius() {
    return (milliKelvin - WATER_FREEZES) / 1000.0;
  }

  /** Degrees Fahrenheit; what was written in Fahrenheit comes back within 0.001. */
  public double inFahrenheit() {
    return milliKelvin * 9 / 5000.0 + ABSOLUTE_ZERO_F;
  }

  /** How many kelvins hotter this is than the other; negative when it is colder. */
  public double kelvinsAbove(Temperature other) {
    return (milliKelvin - other.milliKelvin) / 1000.0;
  }

  /** A temperature so many kelvins higher, or lower when negative. */
  public Temperature plusKelvins(double kelvins) {
    return new Temperature(milliKelvin + Numerals.nearest(kelvins * 1000));
  }

  @Override
  public int compareTo(Temperature other) {
    return Long.compare(milliKelvin, other.milliKelvin);
  }

  /** In Celsius, with as many decimals as it has: {@code 180 C}, {@code 73.889 C}. */
  public String written() {
    return Numerals.decimal(milliKelvin - WATER_FREEZES, 3) + " C";
  }

  /** In Fahrenheit, with as few decimals as bring back this very temperature: {@code 350 F}. */
  String writtenInFahrenheit() {
    int decimals = 0;
    while (decimals < 3 && !equals(fahrenheit(roundedFahrenheit(decimals)))) {
      decimals++;
    }
    return Numerals.decimal(fahrenheitTimes(decimals), decimals) + " F";
  }

  private double roundedFahrenheit(int decimals) {
    return fahrenheitTimes(decimals) / Math.pow(10, decimals);
  }

  private long fahrenheitTimes(int decimals) {
    return Math.round(inFahrenheit() * Math.pow(10, decimals));
  }

  @Override
  public String toString() {
    return written();
  }
}
