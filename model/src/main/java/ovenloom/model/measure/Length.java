package ovenloom.model.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A length, width, height or gap, kept to a thousandth of a millimetre, so that an inch (exactly
 * 25.4 mm) and its eighths are exact.
 *
 * @param micrometres thousandths of a millimetre, 0 or more
 */
public record Length(long micrometres) implements Comparable<Length> {

  private static final Reader<Length> READER = new Reader<>(
      "a length like \"15 cm\", \"65 mm\" or \"2 1/2 in\"",
      Length::understand, Length::written,
      Length::guesses);
  private static final Pattern METRES = Pattern.compile("^(\\d) ?m$");

  /** Refuses a negative length. */
  public Length {
    if (micrometres < 0) {
      throw new IllegalArgumentException("a length of " + micrometres + " micrometres is negative");
    }
  }

  /** Reads a length of at most ten metres: {@code 15 cm}, {@code 65 mm}, {@code 2 1/2 in}, {@code 9"}. */
  public static Parsed<Length> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Length understand(Scanner s) {
    int from = s.at();
    BigFraction figure = Figure.read(s);
    LengthUnit unit = figure == null ? null : s.unit(LengthUnit.WORDS);
    return figure == null || unit == null ? null : unit.of(figure, s, from);
  }

  private static List<String> guesses(List<String> texts) {
    var guesses = new ArrayList<String>();
    texts.forEach(text -> guesses.add(METRES.matcher(text).replaceFirst("$100 cm")));
    guesses.addAll(Guesses.spelling(Guesses.ending(texts, "cm", "in", "mm"), LengthUnit.WORDS));
    return guesses;
  }

  /** So many millimetres. */
  public static Length mm(double millimetres) {
    return new Length(Numerals.nearest(millimetres * LengthUnit.MILLIMETRE.micrometres()));
  }

  /** So many centimetres. */
  public static Length cm(double centimetres) {
    return new Length(Numerals.nearest(centimetres * LengthUnit.CENTIMETRE.micrometres()));
  }

  /** So many inches of exactly 25.4 mm. */
  public static Length in(double inches) {
    return new Length(Numerals.nearest(inches * LengthUnit.INCH.micrometres()));
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(micrometres, other.micrometres);
  }

  /** In the unit it comes out roundest in: {@code 55 cm}, {@code 2 1/2 in}, {@code 5 mm}. */
  public String written() {
    LengthUnit unit = LengthUnit.roundest(List.of(this));
    return unit.number(this) + " " + unit.symbol();
  }

  @Override
  public String toString() {
    return written();
  }
}
