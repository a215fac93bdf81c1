package ovenloom.model.measure;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * The marks of a British gas oven. From mark 1 up each is 25 F hotter than the one before; below
 * it, half the mark is 25 F cooler. The table in Fahrenheit is exact; the round Celsius figures
 * printed on dials differ from it by a few degrees.
 */
public enum GasMark {
  QUARTER("1/4", 225), HALF("1/2", 250), ONE("1", 275), TWO("2", 300), THREE("3", 325), FOUR("4", 350),
  FIVE("5",
      375),
  SIX("6", 400), SEVEN("7", 425), EIGHT("8", 450), NINE("9", 475);

  private final String number;
  private final int fahrenheit;

  GasMark(String number, int fahrenheit) {
    this.number = number;
    this.fahrenheit = fahrenheit;
  }

  /** How hot an oven at this mark is. */
  public Temperature temperature() {
    return Temperature.fahrenheit(fahrenheit);
  }

  /** The mark of exactly this temperature, or null when it lies between marks or beyond them. */
  public static @Nullable GasMark at(Temperature temperature) {
    for (GasMark mark : values()) {
      if (mark.temperature().equals(temperature)) {
        return mark;
      }
    }
    return null;
  }

  /** The mark of this number, or null. */
  static @Nullable GasMark numbered(BigFraction number) {
    for (GasMark mark : values()) {
      if (mark.number.equals(Numerals.mixed(number))) {
        return mark;
      }
    }
    return null;
  }

  /** As on the dial: {@code 1/2}, {@code 6}. */
  public String number() {
    return number;
  }
}
