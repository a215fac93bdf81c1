package ovenloom.solver.search;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Score;

/** The dishes that lose at the table, those that lose most first. */
final class Losers {

  private Losers() {}

  static List<Dish> of(Event event, Score score) {
    Map<String, Long> lost = score.atTheTable();
    return event.dishes()
        .stream()
        .filter(dish -> lost.containsKey(dish.name()))
        .sorted(Comparator.comparingLong(dish -> -lost.getOrDefault(dish.name(), 0L)))
        .toList();
  }
}
