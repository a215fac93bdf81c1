package ovenloom.model.measure;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How well something lets heat through.
 *
 * @param thousandths of one W/(m K), above 0
 */
public record Conductivity(int thousandths) {

  private static final int THOUSANDTHS = 1000;
  private static final String UNIT = " W/(m K)";
  private static final Reader<Conductivity> READER = new Reader<>("a conductivity like \"0.5 W/(m K)\"",
      Conductivity::understand, Conductivity::written, texts -> Guesses.ending(texts, UNIT));
  private static final BigFraction LEAST = BigFraction.of(1, 50);
  private static final BigFraction MOST = BigFraction.of(5);

  /** Refuses what lets no heat through. */
  public Conductivity {
    if (thousandths <= 0) {
      throw new IllegalArgumentException(thousandths + " thousandths of a W/(m K) is not above 0");
    }
  }

  /** Reads a conductivity from 0.02 to 5 W/(m K), to the nearest thousandth: {@code 0.45 W/(m K)}. */
  public static Parsed<Conductivity> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Conductivity understand(Scanner s) {
    int from = s.at();
    BigFraction figure = Figure.read(s);
    if (figure == null || !unit(s)) {
      return null;
    }
    return figure.compareTo(LEAST) < 0 || figure.compareTo(MOST) > 0
        ? s.refuse(from, "from 0.02 to 5 W/(m K)")
        : new Conductivity((int) Numerals.nearest(figure.multiply(THOUSANDTHS)));
  }

  /** With brackets or without. */
  private static boolean unit(Scanner s) {
    boolean over = s.take('w') && s.take('/');
    boolean bracket = s.take('(');
    return over && s.take('m') && s.take('k') && bracket == s.take(')');
  }

  /** W/(m K). */
  public double value() {
    return (double) thousandths / THOUSANDTHS;
  }

  /** {@code 0.45 W/(m K)}. */
  public String written() {
    return Numerals.decimal(thousandths, 3) + UNIT;
  }

  @Override
  public String toString() {
    return written();
  }
}
