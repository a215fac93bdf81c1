package ovenloom.model.measure;

import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What an appliance draws.
 *
 * @param watts 0 or more
 */
public record Power(int watts) implements Comparable<Power> {

  private static final int KILOWATT = 1000;

  private static final Words<Integer> WATTS = new Words<>(
      Map.of("w", 1, "watt", 1, "watts", 1, "kw", KILOWATT, "kilowatt", KILOWATT, "kilowatts", KILOWATT));
  private static final Reader<Power> READER = new Reader<>("a power like \"3 kW\" or \"750 W\"",
      Power::understand,
      Power::written, texts -> Guesses.spelling(Guesses.ending(texts, "W", "kW"), WATTS));
  private static final BigFraction MOST = BigFraction.of(1_000_000);

  /** Refuses less than nothing. */
  public Power {
    if (watts < 0) {
      throw new IllegalArgumentException("a power of " + watts + " W is negative");
    }
  }

  /** Reads a power of at most 1000 kW, to the nearest watt: {@code 3 kW}, {@code 750 W}. */
  public static Parsed<Power> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Power understand(Scanner s) {
    int from = s.at();
    BigFraction figure = Figure.read(s);
    Integer unit = figure == null ? null : s.unit(WATTS);
    if (figure == null || unit == null) {
      return null;
    }
    BigFraction exact = figure.multiply(unit);
    return exact.compareTo(MOST) > 0 ? s.refuse(from, "at most 1000 kW")
        : new Power((int) Numerals.nearest(exact));
  }

  @Override
  public int compareTo(Power other) {
    return Integer.compare(watts, other.watts);
  }

  /** In watts below a kilowatt, else in kilowatts, exactly: {@code 750 W}, {@code 2.4 kW}. */
  public String written() {
    return watts < KILOWATT ? watts + " W" : Numerals.decimal(watts, 3) + " kW";
  }

  @Override
  public String toString() {
    return written();
  }
}
