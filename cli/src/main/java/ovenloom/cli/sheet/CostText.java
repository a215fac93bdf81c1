package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ovenloom.model.why.Cost;

/** What a change costs, in the words of the score. */
final class CostText {

  private CostText() {}

  /** {@code calm 5 more, early 5 less}; nothing where it costs nothing. */
  static String of(Cost cost) {
    List<String> parts = new ArrayList<>();
    cost.atTheTable().forEach((dish, points) -> parts.add(dish + " " + points(points) + " at the table"));
    cost.wishes()
        .forEach((wish, points) -> parts.add(wish.name().toLowerCase(Locale.ROOT) + " " + points(points)));
    if (cost.early() != 0) {
      parts.add("early " + points(cost.early()));
    }
    return String.join(", ", parts);
  }

  private static String points(long points) {
    return String.format(Locale.ENGLISH, "%,d %s", Math.abs(points), points > 0 ? "more" : "less");
  }
}
