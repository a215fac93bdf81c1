package ovenloom.model.measure;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What ingredients are measured in. Cups, spoons and ounces are United States customary ones
 * unless the name says otherwise, from the definitions of 231 cubic inches to the gallon and
 * 453.59237 g to the pound (NIST Handbook 44, appendix C). The label measures are the rounded ones
 * of nutrition labels (21 CFR 101.9(b)(5)(viii)). Spoons of 5 and 15 ml are what metric measuring
 * spoons hold, and also the label's.
 */
public enum Unit {
  /** Things that are counted: eggs, cloves, sheets. */
  PIECE(Kind.COUNT, "piece, pieces", BigFraction.ONE),

  /** A thousandth of a gram. */
  MILLIGRAM(Kind.MASS, "mg, milligram, milligrams", BigFraction.ONE),
  /** A gram. */
  GRAM(Kind.MASS, "g, gr, gram, grams, gramme, grammes", BigFraction.of(1_000)),
  /** A thousand grams. */
  KILOGRAM(Kind.MASS, "kg, kilo, kilos, kilogram, kilograms", BigFraction.of(1_000_000)),
  /** The avoirdupois ounce, a sixteenth of a pound. */
  OUNCE(Kind.MASS, "oz, ounce, ounces", pounds(1, 16)),
  /** The avoirdupois pound. */
  POUND(Kind.MASS, "lb, lbs, pound, pounds", pounds(1, 1)),
  /** The ounce of nutrition labels, 28 g. */
  LABEL_OUNCE(Kind.MASS, "label oz, label ounce, label ounces", BigFraction.of(28_000)),

  /** A thousandth of a litre. */
  MILLILITRE(Kind.VOLUME, "ml, millilitre, millilitres, milliliter, milliliters", BigFraction.of(1_000)),
  /** A hundredth of a litre. */
  CENTILITRE(Kind.VOLUME, "cl, centilitre, centilitres, centiliter, centiliters", BigFraction.of(10_000)),
  /** A tenth of a litre. */
  DECILITRE(Kind.VOLUME, "dl, decilitre, decilitres, deciliter, deciliters", BigFraction.of(100_000)),
  /** A litre. */
  LITRE(Kind.VOLUME, "l, litre, litres, liter, liters", BigFraction.of(1_000_000)),
  /** A third of a tablespoon. */
  TEASPOON(Kind.VOLUME, "tsp, tsps, teaspoon, teaspoons", gallons(1, 768)),
  /** A sixteenth of a cup. */
  TABLESPOON(Kind.VOLUME, "tbsp, tbsps, tbs, tablespoon, tablespoons", gallons(1, 256)),
  /** An eighth of a cup. */
  FLUID_OUNCE(Kind.VOLUME, "fl oz, fluid ounce, fluid ounces", gallons(1, 128)),
  /** Half a pint. */
  CUP(Kind.VOLUME, "cup, cups", gallons(1, 16)),
  /** Half a quart. */
  PINT(Kind.VOLUME, "pt, pts, pint, pints", gallons(1, 8)),
  /** A quarter of a gallon. */
  QUART(Kind.VOLUME, "qt, qts, quart, quarts", gallons(1, 4)),
  /** 231 cubic inches. */
  GALLON(Kind.VOLUME, "gal, gallon, gallons", gallons(1, 1)),
  /** The spoon of 5 ml. */
  METRIC_TEASPOON(Kind.VOLUME, "metric tsp, metric teaspoon, metric teaspoons", BigFraction.of(5_000)),
  /** The spoon of 15 ml. */
  METRIC_TABLESPOON(Kind.VOLUME, "metric tbsp, metric tablespoon, metric tablespoons",
      BigFraction.of(15_000)),
  /** The cup of 250 ml. */
  METRIC_CUP(Kind.VOLUME, "metric cup, metric cups", BigFraction.of(250_000)),
  /** A sixteenth of the British gallon of 4.54609 litres. */
  IMPERIAL_CUP(Kind.VOLUME, "imperial cup, imperial cups", BigFraction.of(4_546_090, 16)),
  /** The fluid ounce of nutrition labels, 30 ml. */
  LABEL_FLUID_OUNCE(Kind.VOLUME, "label fl oz, label fluid ounce, label fluid ounces",
      BigFraction.of(30_000)),
  /** The cup of nutrition labels, 240 ml. */
  LABEL_CUP(Kind.VOLUME, "label cup, label cups", BigFraction.of(240_000));

  /** What a unit counts. */
  public enum Kind {
    /** Pieces. */
    COUNT,
    /** What scales show. */
    MASS,
    /** What jugs and spoons hold. */
    VOLUME
  }

  static final Words<Unit> WORDS = Words.of(values(), unit -> unit.words);

  private final Kind kind;
  private final String words;
  @SuppressWarnings("ImmutableEnumChecker") // a BigFraction never changes, though nothing marks it so
  private final BigFraction smallest;

  Unit(Kind kind, String words, BigFraction smallest) {
    this.kind = kind;
    this.words = words;
    this.smallest = smallest;
  }

  /** What it counts. */
  public Kind kind() {
    return kind;
  }

  /** As written after a number, in the singular: {@code kg}, {@code cup}, {@code piece}. */
  public String symbol() {
    return words.substring(0, words.indexOf(','));
  }

  /** What one of it is, exactly: in pieces, milligrams or microlitres, as its kind is. */
  public BigFraction smallest() {
    return smallest;
  }

  private static BigFraction pounds(int some, int of) {
    return BigFraction.of(453_592_37L * some, 100L * of);
  }

  private static BigFraction gallons(int some, int of) {
    return BigFraction.of(3_785_411_784L * some, 1_000L * of);
  }
}
