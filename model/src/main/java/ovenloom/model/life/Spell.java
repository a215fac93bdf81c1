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

  /** Food after a minute somewhere; what is covered gets no hotter than boiling. */
  static TemperatureProfile aMinute(TemperatureProfile food, Surroundings there) {
    if (food.isAsWarmAs(there.air().inCelsius())) {
      return food;
    }
    TemperatureProfile then = food.after(1, there);
    return there.wetness() == 0 ? then.noHotterThanBoiling() : then;
  }

  /** The food after the next minute. */
  static TemperatureProfile next(Spell spell, int minute, TemperatureProfile food) {
    return switch (spell) {
      case Around around -> aMinute(food, around.there().apply(minute));
      case WarmedTo warmed -> {
        double left = warmed.minutes() - minute;
        yield food.evenedOut(food.mean() + (warmed.celsius() - food.mean()) / left);
      }
    };
  }
}
