package ovenloom.model.life;

import java.util.function.IntFunction;
import ovenloom.model.heat.Surroundings;
import ovenloom.model.heat.TemperatureProfile;

/** Some minutes of food in one place. */
sealed interface Spell {

  int minutes();

  /**
   * In air, water or an oven, whose warmth may change.
   *
   * @param there by the minute, from 0
   */
  record Around(int minutes, IntFunction<Surroundings> there) implements Spell {}

  /** On a burner, and stirred: as warm all through, in even steps to what it is in the end, C. */
  record WarmedTo(int minutes, double celsius) implements Spell {}

  /** The food after the next minute. */
  static TemperatureProfile next(Spell spell, int minute, TemperatureProfile food) {
    return switch (spell) {
      case Around around -> {
        Surroundings there = around.there().apply(minute);
        yield food.isAsWarmAs(there.air().inCelsius()) ? food : food.after(1, there);
      }
      case WarmedTo warmed -> {
        double left = warmed.minutes() - minute;
        yield food.evenedOut(food.mean() + (warmed.celsius() - food.mean()) / left);
      }
    };
  }
}
