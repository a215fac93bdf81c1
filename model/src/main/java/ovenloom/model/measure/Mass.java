package ovenloom.model.measure;

/**
 * What something weighs.
 *
 * @param milligrams thousandths of a gram, 0 or more
 */
public record Mass(long milligrams) implements Comparable<Mass> {

  private static final long MOST = 1_000_000_000;
  private static final long KILOGRAM = 1_000_000;

  private static final Reader<Quantity> READER = new Reader<>(
      "a weight like \"250 g\", \"1.5 kg\" or \"2 lb\"",
      s -> Quantity.measured(s, Unit.Kind.MASS, MOST, "at most a tonne"), Quantity::written,
      texts -> Guesses.spelling(Guesses.ending(texts, "g", "kg", "lb"), Unit.WORDS));

  /** Refuses less than nothing. */
  public Mass {
    if (milligrams < 0) {
      throw new IllegalArgumentException("a mass of " + milligrams + " mg is negative");
    }
  }

  /** Reads a weight of at most a tonne in any {@link Unit} of weight: {@code 1.5 kg}, {@code 2 lb}. */
  public static Parsed<Mass> read(String text) {
    return READER.read(text).map(quantity -> new Mass(quantity.smallest()));
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
