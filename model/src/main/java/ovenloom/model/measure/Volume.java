package ovenloom.model.measure;

/**
 * How much room a liquid or a loose thing fills.
 *
 * @param microlitres millionths of a litre, 0 or more
 */
public record Volume(long microlitres) implements Comparable<Volume> {

  private static final long MOST = 1_000_000_000;
  private static final long LITRE = 1_000_000;

  private static final Reader<Quantity> READER = new Reader<>(
      "a volume like \"250 ml\", \"1.5 l\" or \"2 cups\"",
      s -> Quantity.measured(s, Unit.Kind.VOLUME, MOST, "at most 1000 litres"), Quantity::written,
      texts -> Guesses.spelling(Guesses.ending(texts, "ml", "l", "cups"), Unit.WORDS));

  /** Refuses less than nothing. */
  public Volume {
    if (microlitres < 0) {
      throw new IllegalArgumentException("a volume of " + microlitres + " microlitres is negative");
    }
  }

  /** Reads a volume of at most 1000 litres in any {@link Unit} of volume: {@code 250 ml}, {@code 2 cups}. */
  public static Parsed<Volume> read(String text) {
    return READER.read(text).map(quantity -> new Volume(quantity.smallest()));
  }

  /** So many millilitres, to the nearest thousandth. */
  public static Volume millilitres(double millilitres) {
    return new Volume(Numerals.nearest(millilitres * 1000));
  }

  @Override
  public int compareTo(Volume other) {
    return Long.compare(microlitres, other.microlitres);
  }

  /** In millilitres below a litre, else in litres, exactly: {@code 250 ml}, {@code 1.5 l}. */
  public String written() {
    return microlitres < LITRE ? Numerals.decimal(microlitres, 3) + " ml"
        : Numerals.decimal(microlitres, 6) + " l";
  }

  @Override
  public String toString() {
    return written();
  }
}
