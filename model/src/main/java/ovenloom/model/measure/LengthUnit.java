package ovenloom.model.measure;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** The units lengths are written in; the inch is the international one. */
enum LengthUnit {
  MILLIMETRE("mm", 1_000, "mm, millimetre, millimetres, millimeter, millimeters"),
  CENTIMETRE("cm", 10_000, "cm, centimetre, centimetres, centimeter, centimeters"),
  INCH("in", 25_400, "in, inch, inches, \"");

  static final Words<LengthUnit> WORDS = Words.of(values(), unit -> unit.words);

  private static final BigFraction LONGEST = BigFraction.of(10_000_000);
  private static final int HALF_CENTIMETRE = 5_000;
  private static final int EIGHTH_OF_AN_INCH = 3_175;

  private final String symbol;
  private final int micrometres;
  private final String words;

  LengthUnit(String symbol, int micrometres, String words) {
    this.symbol = symbol;
    this.words = words;
    this.micrometres = micrometres;
  }

  String symbol() {
    return symbol;
  }

  int micrometres() {
    return micrometres;
  }

  /** So many of this unit, to the nearest micrometre; null, and refused, above ten metres. */
  @Nullable
  Length of(BigFraction number, Scanner s, int from) {
    BigFraction exact = number.multiply(micrometres);
    return exact.compareTo(LONGEST) > 0 ? s.refuse(from, "at most 10 metres")
        : new Length(Numerals.nearest(exact));
  }

  /** The unit someone with a ruler would have used: centimetres, unless eighths of an inch fit better. */
  static LengthUnit roundest(List<Length> lengths) {
    if (allMultiples(lengths, EIGHTH_OF_AN_INCH) && !allMultiples(lengths, HALF_CENTIMETRE)) {
      return INCH;
    }
    boolean small = lengths.stream().allMatch(l -> l.micrometres() < CENTIMETRE.micrometres);
    return small ? MILLIMETRE : CENTIMETRE;
  }

  private static boolean allMultiples(List<Length> lengths, int step) {
    return lengths.stream().allMatch(l -> l.micrometres() % step == 0);
  }

  /** How many of this unit the length is, exactly. */
  String number(Length length) {
    if (this == INCH) {
      return Numerals.mixed(BigFraction.of(length.micrometres(), micrometres));
    }
    return Numerals.decimal(length.micrometres(), this == MILLIMETRE ? 3 : 4);
  }
}
