package ovenloom.model.measure;

import java.math.BigInteger;
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

  private static final BigInteger FINEST_SPOKEN = BigInteger.valueOf(16);

  /** Refuses less than nothing, and a counted word beside a measure. */
  public Quantity {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException("a quantity of " + amount + " is negative");
    }
    if (counted != null && unit != Unit.PIECE) {
      throw new IllegalArgumentException(counted + " are counted, not measured in " + unit);
    }
  }

  /** A quantity without a counted word. */
  public Quantity(BigFraction amount, Unit unit) {
    this(amount, unit, null);
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

  private long smallest() {
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
