package ovenloom.model.measure;

/**
 * A share in the hundred, to two decimals.
 *
 * @param hundredths hundredths of one per cent, 0 or more: {@code 5 %} is 500
 */
public record Percent(int hundredths) implements Comparable<Percent> {

  /** Refuses less than nothing. */
  public Percent {
    if (hundredths < 0) {
      throw new IllegalArgumentException(hundredths + " hundredths of a per cent is negative");
    }
  }

  /** A whole number of per cent. */
  public static Percent of(int percent) {
    return new Percent(Math.multiplyExact(percent, 100));
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
