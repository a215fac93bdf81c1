package ovenloom.model.measure;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** Reads a number of degrees and the scale they are counted on. */
final class Degrees {

  static final Words<TemperatureUnit> SCALES = Words.of(TemperatureUnit.values(), TemperatureUnit::words);

  private Degrees() {}

  /** A temperature in Celsius or Fahrenheit, within these degrees Celsius, or null. */
  static @Nullable Setting read(Scanner s, int coldest, int hottest) {
    int from = s.at();
    int sign = s.take('-') ? -1 : 1;
    BigFraction figure = Figure.read(s);
    s.takeWord("°", "deg", "degree", "degrees");
    TemperatureUnit unit = figure == null ? null : s.unit(SCALES);
    if (figure == null || unit == null) {
      return null;
    }
    double degrees = sign * figure.doubleValue();
    double celsius = unit == TemperatureUnit.FAHRENHEIT ? (degrees - 32) / 1.8 : degrees;
    if (celsius < coldest || celsius > hottest) {
      return s.refuse(from, "something from " + both(coldest) + " to " + both(hottest));
    }
    return unit == TemperatureUnit.FAHRENHEIT ? Setting.fahrenheit(degrees) : Setting.celsius(degrees);
  }

  private static String both(int celsius) {
    Setting setting = Setting.celsius(celsius);
    return setting + " (" + setting.temperature().writtenInFahrenheit() + ")";
  }
}
