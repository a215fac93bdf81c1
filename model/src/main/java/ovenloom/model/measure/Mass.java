package ovenloom.model.measure;

/**
 * What something weighs.
 *
 * @param milligrams thousandths of a gram, 0 or more
 */
public record Mass(long milligrams) implements Comparable<Mass> {

  private static final long KILOGRAM = 1_000_000;

  /** Refuses less than nothing. */
  public Mass {
    if (milligrams < 0) {
      throw new IllegalArgumentException("a mass of " + milligrams + " mg is negative");
    }
  }

  /** So many grams, to the nearest milligram. */
  public static Mass grams(double grams) {
    return new Mass(Numerals.nearest(grams * 1000));
  }

  @Override
  public int compareTo(Mass other) {
    return Long.compare(milligrams, other.milligrams);
  }

  /** In grams below a kilogram, else in kilograms, exactly: {@code 250 g}, {@code 1.5 kg}. */
  public String written() {
    return milligrams < KILOGRAM ? Numerals.decimal(milligrams, 3) + " g"
        : Numerals.decimal(milligrams, 6) + " kg";
  }

  @Override
  public String toString() {
    return written();
  }
}
