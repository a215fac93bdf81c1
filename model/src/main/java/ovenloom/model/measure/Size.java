package ovenloom.model.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How much room something takes or offers: a rack, a shelf, a pan. Written
 * {@code 55 x 38 cm} or {@code 50 x 35 x 20 cm}; which side is the width is the writer's choice.
 *
 * @param width the first figure
 * @param depth the second figure, from front to back
 * @param height the third figure, or null when nobody gave one
 */
public record Size(Length width, Length depth, @Nullable Length height) {

  private static final int SIDES = 3;
  private static final Reader<Size> READER = new Reader<>(
      "a size like \"55 x 38 cm\", \"9x13 in\" or \"50 x 35 x 20 cm\"", Size::understand, Size::written,
      Size::guesses);

  /** Refuses a side of nothing. */
  public Size {
    if (isNothing(width) || isNothing(depth) || (height != null && isNothing(height))) {
      throw new IllegalArgumentException("a side of nothing in " + width + ", " + depth + ", " + height);
    }
  }

  /** A size that says nothing of height. */
  public Size(Length width, Length depth) {
    this(width, depth, null);
  }

  /**
   * Reads two or three sides, each above nothing and at most ten metres, with one unit behind the
   * last or behind each: {@code 55 x 38 cm}, {@code 9x13 in}, {@code 60 cm × 40 cm}.
   */
  public static Parsed<Size> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Size understand(Scanner s) {
    int from = s.at();
    var figures = new ArrayList<BigFraction>();
    LengthUnit unit = null;
    LengthUnit last;
    do {
      BigFraction figure = Figure.read(s);
      if (figure == null) {
        return null;
      }
      figures.add(figure);
      int before = s.at();
      last = s.unit(LengthUnit.WORDS);
      if (last != null && unit != null && last != unit) {
        return s.refuse(before, "one unit for all sides");
      }
      unit = last == null ? unit : last;
    } while (figures.size() < SIDES && s.take('x'));
    return last == null ? null : of(figures, last, s, from);
  }

  private static @Nullable Size of(List<BigFraction> figures, LengthUnit unit, Scanner s, int from) {
    var sides = new ArrayList<Length>();
    for (BigFraction figure : figures) {
      Length side = unit.of(figure, s, from);
      if (side == null || isNothing(side)) {
        return s.refuse(from, null);
      }
      sides.add(side);
    }
    return switch (sides.size()) {
      case 2 -> new Size(sides.get(0), sides.get(1));
      case SIDES -> new Size(sides.get(0), sides.get(1), sides.get(2));
      default -> null;
    };
  }

  private static boolean isNothing(Length side) {
    return side.micrometres() == 0;
  }

  private static List<String> guesses(List<String> texts) {
    var guesses = new ArrayList<String>();
    texts.forEach(text -> guesses.add(text.replaceFirst(" ?m$", " cm")));
    guesses.addAll(Guesses.spelling(Guesses.ending(texts, "cm", "in"), LengthUnit.WORDS));
    return guesses;
  }

  /** In one unit, the roundest: {@code 55 x 38 cm}, {@code 12 x 20 x 2 1/2 in}. */
  public String written() {
    List<Length> sides = height == null ? List.of(width, depth) : List.of(width, depth, height);
    LengthUnit unit = LengthUnit.roundest(sides);
    return sides.stream().map(unit::number).collect(Collectors.joining(" x ", "", " " + unit.symbol()));
  }

  @Override
  public String toString() {
    return written();
  }
}
