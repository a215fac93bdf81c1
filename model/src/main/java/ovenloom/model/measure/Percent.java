package ovenloom.model.measure;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A share in the hundred, to two decimals.
 *
 * @param hundredths hundredths of one per cent, 0 or more: {@code 5 %} is 500
 */
public record Percent(int hundredths) implements Comparable<Percent> {

  private static final int HUNDREDTHS = 100;
  private static final Reader<Percent> READER = new Reader<>("a share like \"5 %\"", Percent::understand,
      Percent::written, texts -> Guesses.ending(texts, "%"));
  private static final BigFraction MOST = BigFraction.of(1000);

  /** Refuses less than nothing. */
  public Percent {
    if (hundredths < 0) {
      throw new IllegalArgumentException(hundredths + " hundredths of a per cent is negative");
    }
  }

  /** Reads a share of at most 1000 %, to the nearest hundredth of one per cent: {@code 5 %}, {@code 2.5 per cent}. */
  public static Parsed<Percent> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Percent understand(Scanner s) {
    int from = s.at();
    BigFraction figure = Figure.read(s);
    if (figure == null || !sign(s)) {
      return null;
    }
    return figure.compareTo(MOST) > 0 ? s.refuse(from, "at most 1000 %")
        : new Percent((int) Numerals.nearest(figure.multiply(HUNDREDTHS)));
  }

  private static boolean sign(Scanner s) {
    return s.takeWord("%", "percent") || (s.takeWord("per") && s.takeWord("cent"));
  }

  /** A whole number of per cent. */
  public static Percent of(int percent) {
    return new Percent(Math.multiplyExact(percent, HUNDREDTHS));
  }

  /** As a part of one: {@code 5 %} is 0.05. */
  public double share() {
    return hundredths / 10_000.0;
  }

  @Override
  public int compareTo(Percent other) {
    return Integer.compare(hundredths, other.hundredths);
  }

  /** With a space before the sign: {@code 5 %}, {@code 2.5 %}. */
  public String written() {
    return Numerals.decimal(hundredths, 2) + " %";
  }

  @Override
  public String toString() {
    return written();
  }
}
