package ovenloom.model.measure;

import java.util.List;

/**
 * A length, width, height or gap, kept to a thousandth of a millimetre, so that an inch (exactly
 * 25.4 mm) and its eighths are exact.
 *
 * @param micrometres thousandths of a millimetre, 0 or more
 */
public record Length(long micrometres) implements Comparable<Length> {

  /** Refuses a negative length. */
  public Length {
    if (micrometres < 0) {
      throw new IllegalArgumentException("a length of " + micrometres + " micrometres is negative");
    }
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
