package ovenloom.model.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What an oven is set to, in the unit the cook wrote: {@code 350 F}, {@code 180 C},
 * {@code gas 4}.
 *
 * @param temperature how hot
 * @param unit the scale it was written in; with {@link TemperatureUnit#GAS} the temperature is one
 *     of the marks
 */
public record Setting(Temperature temperature, TemperatureUnit unit) {

  private static final Reader<Setting> READER = new Reader<>(
      "an oven setting like \"350 F\", \"180 C\" or \"gas 4\"", Setting::understand, Setting::written,
      Setting::guesses);
  private static final Pattern KELVINS = Pattern.compile("(\\d{1,9}) ?(?:k|kelvin)");
  private static final int TOO_HOT_FOR_CELSIUS = 300;

  /** Refuses a gas setting between the marks. */
  public Setting {
    if (unit == TemperatureUnit.GAS && GasMark.at(temperature) == null) {
      throw new IllegalArgumentException("no gas mark is " + temperature);
    }
  }

  /**
   * Reads what a cook writes for an oven setting, from 0 C to 600 C: {@code 350 F},
   * {@code 180 °C}, {@code gas 4}, {@code gas mark 1/2}.
   */
  public static Parsed<Setting> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Setting understand(Scanner s) {
    boolean gas = s.takeWord("gas");
    return s.takeWord("mark") || gas ? gasMark(s) : Degrees.read(s, 0, 600);
  }

  private static @Nullable Setting gasMark(Scanner s) {
    int from = s.at();
    BigFraction number = Figure.read(s);
    GasMark mark = number == null ? null : GasMark.numbered(number);
    if (mark != null) {
      return gas(mark);
    }
    return number == null ? null : s.refuse(from, "a gas mark: 1/4, 1/2 or 1 to 9");
  }

  private static List<String> guesses(List<String> texts) {
    var guesses = new ArrayList<String>();
    texts.forEach(text -> guesses.add("gas " + text));
    guesses.addAll(Guesses.spelling(Guesses.ending(texts, "F", "C"), Degrees.SCALES));
    Matcher kelvins = KELVINS.matcher(texts.getFirst());
    if (kelvins.matches()) {
      String figure = kelvins.group(1);
      guesses.add(figure + (Integer.parseInt(figure) > TOO_HOT_FOR_CELSIUS ? " F" : " C"));
    }
    return guesses;
  }

  /** So many degrees Celsius. */
  public static Setting celsius(double degrees) {
    return new Setting(Temperature.celsius(degrees), TemperatureUnit.CELSIUS);
  }

  /** So many degrees Fahrenheit. */
  public static Setting fahrenheit(double degrees) {
    return new Setting(Temperature.fahrenheit(degrees), TemperatureUnit.FAHRENHEIT);
  }

  /** A mark of a gas oven. */
  public static Setting gas(GasMark mark) {
    return new Setting(mark.temperature(), TemperatureUnit.GAS);
  }

  /** In its own unit: {@code 350 F}, {@code 180 C}, {@code gas 1/2}. */
  public String written() {
    return switch (unit) {
      case CELSIUS -> temperature.written();
      case FAHRENHEIT -> temperature.writtenInFahrenheit();
      case GAS -> "gas " + Objects.requireNonNull(GasMark.at(temperature)).number();
    };
  }

  @Override
  public String toString() {
    return written();
  }
}
