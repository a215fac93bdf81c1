package ovenloom.solver.search;

import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * How long a plan has a step's food wait, by place, in minutes that count.
 *
 * @param places where one batch of it waits, at most: so many limits share what it may use up
 */
record Waited(Map<String, Integer> minutes, int places) {

  static final String COUNTER = "on the counter";
  static final String OVEN = "in its oven";
  static final String BURNER = "on its burner";

  static Waited of(Dish dish, Step step, Plan plan) {
    Map<String, Integer> longest = new TreeMap<>();
    int places = 1;
    for (Stay stay : plan.stays()) {
      if (stay.dish().equals(dish.name()) && stay.step().equals(step.name())) {
        Map<String, Integer> minutes = minutes(stay);
        minutes.forEach((place, spent) -> longest.merge(place, spent, Math::max));
        places = Math.max(places, minutes.size());
      }
    }
    longest.computeIfPresent(COUNTER, (place, spent) -> spent - Keeps.FREE_ON_THE_COUNTER);
    return new Waited(longest, places);
  }

  private static Map<String, Integer> minutes(Stay stay) {
    Map<String, Integer> minutes = new TreeMap<>();
    stay.parts().forEach(part -> minutes.merge(place(part.where()), part.when().minutes(), Integer::sum));
    return minutes;
  }

  private static String place(Where where) {
    return switch (where) {
      case Where.Counter() -> COUNTER;
      case Where.OnShelf(String store, var shelves) -> store;
      case Where.InOven(var oven, var mark) -> OVEN;
      case Where.OnBurner(var burners) -> BURNER;
    };
  }

  /** What a limit there must at least allow, if all places share alike. */
  int in(String place) {
    return places * minutes.getOrDefault(place, 0);
  }
}
