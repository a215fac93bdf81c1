package ovenloom.model.measure;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** The units lengths are written in; the inch and the foot are the international ones. */
enum LengthUnit {
  MILLIMETRE("mm", 1_000), CENTIMETRE("cm", 10_000), INCH("in", 25_400), FOOT("ft", 304_800);

  private static final int HALF_CENTIMETRE = 5_000;
  private static final int EIGHTH_OF_AN_INCH = 3_175;

  private final String symbol;
  private final int micrometres;

  LengthUnit(String symbol, int micrometres) {
    this.symbol = symbol;
    this.micrometres = micrometres;
  }

  String symbol() {
    return symbol;
  }

  int micrometres() {
    return micrometres;
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
