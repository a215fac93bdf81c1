package ovenloom.cli.page;

import java.util.List;
import java.util.Locale;
import ovenloom.model.tally.Deciding.Decider;

/**
 * How often a dish decides, as a bar.
 *
 * @param most how often the most frequent does
 */
public record Bar(Decider dish, long most) {

  /** Those that decide less often are not drawn. */
  static final int MOST = 15;

  static List<Bar> of(List<Decider> dishes) {
    return dishes.stream().limit(MOST).map(dish -> new Bar(dish, dishes.getFirst().runs())).toList();
  }

  /** In percent of the room there is. */
  public String withAPlan() {
    return percent(dish.withAPlan());
  }

  public String without() {
    return percent(dish.without());
  }

  private String percent(long runs) {
    return String.format(Locale.ROOT, "%.2f%%", 100.0 * runs / most);
  }
}
