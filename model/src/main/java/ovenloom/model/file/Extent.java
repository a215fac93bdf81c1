package ovenloom.model.file;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Step;

/** How much work some dishes are, so that a menu from a stranger does not keep anyone busy for hours. */
final class Extent {

  /** How many steps an event may have, each counted once for each batch. */
  static final int MOST_RUNS = 5_000;

  /** How many links between them. */
  static final int MOST_LINKS = 20_000;

  private record Name(String dish, String step) {}

  private Extent() {}

  static @Nullable Fault tooMuch(List<Dish> dishes) {
    if (runs(dishes) > MOST_RUNS) {
      return new Fault.TooMuch("steps, each counted once a batch", MOST_RUNS);
    }
    return links(dishes) > MOST_LINKS
        ? new Fault.TooMuch("links between steps, each counted once a batch", MOST_LINKS) : null;
  }

  private static long runs(List<Dish> dishes) {
    return dishes.stream().mapToLong(dish -> (long) dish.batches() * dish.steps().size()).sum();
  }

  private static long links(List<Dish> dishes) {
    Map<Name, Integer> times = new HashMap<>();
    for (Dish dish : dishes) {
      dish.steps().forEach(step -> times.put(new Name(dish.name(), step.name()), times(dish, step)));
    }
    long links = 0;
    for (Dish dish : dishes) {
      for (Step step : dish.steps()) {
        for (Link link : step.after()) {
          links += links(times.getOrDefault(new Name(link.dish(), link.step()), 0), times(dish, step));
        }
      }
    }
    return links;
  }

  private static int times(Dish dish, Step step) {
    return step.once() ? 1 : dish.batches();
  }

  /** One to one where there are as many, else all to all. */
  private static long links(int earlier, int later) {
    return earlier == later ? later : (long) earlier * later;
  }
}
