package ovenloom.model.measure;

import java.math.BigInteger;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How much of an ingredient, as a cook writes it and exact, so that thirds of a cup stay thirds:
 * {@code 2 1/2 cups}, {@code 1.5 kg}, {@code 12 eggs}, {@code 3}.
 *
 * @param amount how many, 0 or more
 * @param unit of what; {@link Unit#PIECE} for things that are counted
 * @param counted the word for what is counted, as it was written ({@code eggs}), or null; only
 *     with {@link Unit#PIECE}
 */
public record Quantity(BigFraction amount, Unit unit, @Nullable String counted) {

  private static final Reader<Quantity> READER = new Reader<>(
      "a quantity like \"1.5 kg\", \"2 1/2 cups\" or \"12 eggs\"", Quantity::understand, Quantity::written,
      texts -> Guesses.spelling(texts, Unit.WORDS));
  private static final Pattern COUNTED = Pattern.compile("\\p{L}[\\p{L}\\p{M}'’-]+(?: [\\p{L}\\p{M}'’-]+)*");
  private static final BigFraction MOST = BigFraction.of(1_000_000);
  private static final BigInteger FINEST_SPOKEN = BigInteger.valueOf(16);

  /** Refuses less than nothing, a counted word beside a measure, and a unit as a counted word. */
  public Quantity {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException("a quantity of " + amount + " is negative");
    }
    if (counted != null && (unit != Unit.PIECE || !canBeCounted(counted))) {
      throw new IllegalArgumentException("\"" + counted + "\" are not counted in " + unit);
    }
  }

  /** A quantity without a counted word. */
  public Quantity(BigFraction amount, Unit unit) {
    this(amount, unit, null);
  }

  /**
   * Reads up to a million of a {@link Unit} or of things that are counted: {@code 2 1/2 cups},
   * {@code ½ tsp}, {@code 1.5 kg}, {@code 12 eggs}, {@code 3}.
   */
  public static Parsed<Quantity> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Quantity understand(Scanner s) {
    int from = s.at();
    BigFraction amount = Figure.read(s);
    if (amount == null) {
      return null;
    }
    if (amount.compareTo(MOST) > 0) {
      return s.refuse(from, "at most a million");
    }
    Unit unit = s.ended() ? Unit.PIECE : s.unit(Unit.WORDS);
    return unit == null ? counted(s, amount) : new Quantity(amount, unit);
  }

  /** An amount in a unit of this kind that comes to no more than this in its smallest, or null. */
  static @Nullable Quantity measured(Scanner s, Unit.Kind kind, long most, String whatIsMost) {
    int from = s.at();
    BigFraction amount = Figure.read(s);
    int before = s.at();
    Unit unit = amount == null ? null : s.unit(Unit.WORDS);
    if (amount == null || unit == null) {
      return null;
    }
    if (unit.kind() != kind) {
      return s.refuse(before, null);
    }
    var quantity = new Quantity(amount, unit);
    return quantity.smallest() > most ? s.refuse(from, whatIsMost) : quantity;
  }

  private static @Nullable Quantity counted(Scanner s, BigFraction amount) {
    int from = s.at();
    String words = s.rest();
    return canBeCounted(words) ? new Quantity(amount, Unit.PIECE, words) : s.refuse(from, null);
  }

  private static boolean canBeCounted(String words) {
    var s = new Scanner(words);
    return COUNTED.matcher(words).matches() && s.unit(Unit.WORDS) == null
        && Unit.WORDS.near(s.word()).isEmpty();
  }

  /** The same ingredient so many times over, 0 or more. */
  public Quantity times(BigFraction factor) {
    return new Quantity(amount.multiply(factor), unit, counted);
  }

  /** What it weighs, to the nearest milligram, or null when it is not measured by weight. */
  public @Nullable Mass mass() {
    return unit.kind() == Unit.Kind.MASS ? new Mass(smallest()) : null;
  }

  /** What it fills, to the nearest microlitre, or null when it is not measured by volume. */
  public @Nullable Volume volume() {
    return unit.kind() == Unit.Kind.VOLUME ? new Volume(smallest()) : null;
  }

  /** In milligrams, microlitres or pieces, to the nearest. */
  long smallest() {
    return Numerals.nearest(amount.multiply(unit.smallest()));
  }

  /** As a cook would write it: halves and thirds of cups, decimals of kilograms. */
  public String written() {
    return switch (unit) {
      case PIECE -> counted == null ? number() : number() + " " + counted;
      case CUP, METRIC_CUP, IMPERIAL_CUP, LABEL_CUP ->
        number() + " " + unit.symbol() + (moreThanOne() ? "s" : "");
      default -> number() + " " + unit.symbol();
    };
  }

  private boolean moreThanOne() {
    return amount.compareTo(BigFraction.ONE) > 0;
  }

  private String number() {
    boolean spoken = !onMetricScales() && amount.getDenominator().compareTo(FINEST_SPOKEN) <= 0;
    String decimal = spoken ? null : Numerals.decimal(amount);
    return decimal == null ? Numerals.mixed(amount) : decimal;
  }

  private boolean onMetricScales() {
    return switch (unit) {
      case MILLIGRAM, GRAM, KILOGRAM, MILLILITRE, CENTILITRE, DECILITRE, LITRE -> true;
      default -> false;
    };
  }

  @Override
  public String toString() {
    return written();
  }
}
