package ovenloom.model.measure;

import java.util.List;
import java.util.stream.Collectors;
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

  /** A size that says nothing of height. */
  public Size(Length width, Length depth) {
    this(width, depth, null);
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
