package ovenloom.model.measure;

import java.util.Objects;

/**
 * What an oven is set to, in the unit the cook wrote: {@code 350 F}, {@code 180 C},
 * {@code gas 4}.
 *
 * @param temperature how hot
 * @param unit the scale it was written in; with {@link TemperatureUnit#GAS} the temperature is one
 *     of the marks
 */
public record Setting(Temperature temperature, TemperatureUnit unit) {

  /** Refuses a gas setting between the marks. */
  public Setting {
    if (unit == TemperatureUnit.GAS && GasMark.at(temperature) == null) {
      throw new IllegalArgumentException("no gas mark is " + temperature);
    }
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
