package ovenloom.model.measure;

/**
 * How much room a liquid or a loose thing fills.
 *
 * @param microlitres millionths of a litre, 0 or more
 */
public record Volume(long microlitres) implements Comparable<Volume> {

  private static final long LITRE = 1_000_000;

  /** Refuses less than nothing. */
  public Volume {
    if (microlitres < 0) {
      throw new IllegalArgumentException("a volume of " + microlitres + " microlitres is negative");
    }
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
