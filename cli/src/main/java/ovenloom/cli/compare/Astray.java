package ovenloom.cli.compare;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;

/** By how much dishes come to the table too cool, or too warm where they are to be cool. */
final class Astray {

  private Astray() {}

  /** Tenths of a degree in the mean of all portions, by dish, of those that do. */
  static Map<String, Long> tenths(Plan plan) {
    Map<String, Long> all = new TreeMap<>();
    for (Dish dish : plan.event().dishes()) {
      long points = plan.score().atTheTable().getOrDefault(dish.name(), 0L);
      long portions = Math.max(1, (long) dish.portionsInABatch() * dish.batches());
      if (points > 0) {
        all.put(dish.name(), Math.max(1, Math.round((double) points / portions)));
      }
    }
    return all;
  }

  /** {@code 3.1 degrees} */
  static String words(long tenths) {
    return String.format(Locale.ENGLISH, "%.1f degrees", tenths / 10.0);
  }
}
