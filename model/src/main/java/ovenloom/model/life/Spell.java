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

  /**
   * On a burner turned low, and stirred: what is colder comes in even steps to what the burner keeps, C; what is hotter cools in the
   * kitchen's air until then.
   */
  record KeptOnLow(int minutes, double celsius, Surroundings kitchen) implements Spell {}

  /** In ice water, and stirred now and then. */
  record Stirred(int minutes, Surroundings there) implements Spell {

    /** Minutes from one stir to the next. Southern Nevada Health District, of ice baths; row T27 of the facts. */
    static final int EVERY = 10;
  }

  /** In air that stays as it is, and takes vapour only from food that is warmer. */
  record InStillAir(int minutes, Surroundings there) implements Spell {}

  /** Food after a minute in an oven; what is wet or covered gets no hotter than boiling. */
  static TemperatureProfile inAnOven(TemperatureProfile food, Surroundings there) {
    return aMinute(food, there).noHotterThanBoiling(there.wetness() == 0);
  }

  /** Food after a minute somewhere. */
  static TemperatureProfile aMinute(TemperatureProfile food, Surroundings there) {
    return food.isAsWarmAs(there.air().inCelsius()) ? food : food.after(1, there);
  }

  /** Food after a minute in such air. */
  private static TemperatureProfile inAir(TemperatureProfile food, Surroundings there) {
    return aMinute(food, food.surface() > there.air().inCelsius() ? there : there.dry());
  }

  /** The food after the next minute. */
  static TemperatureProfile next(Spell spell, int minute, TemperatureProfile food) {
    return switch (spell) {
      case Around around -> inAnOven(food, around.there().apply(minute));
      case InStillAir air -> inAir(food, air.there());
      case Stirred stirred -> {
        TemperatureProfile then = aMinute(food, stirred.there());
        yield (minute + 1) % Stirred.EVERY == 0 ? then.stirred() : then;
      }
      case WarmedTo warmed -> warmed(food, warmed.celsius(), warmed.minutes() - minute);
      case KeptOnLow low -> food.mean() > low.celsius() ? cooled(food, low)
          : warmed(food, low.celsius(), low.minutes() - minute);
    };
  }

  private static TemperatureProfile cooled(TemperatureProfile food, KeptOnLow low) {
    return food.evenedOut(Math.max(low.celsius(), inAir(food, low.kitchen()).mean()));
  }

  /** A minute of as many as are left until it is so warm. */
  private static TemperatureProfile warmed(TemperatureProfile food, double celsius, int left) {
    return food.evenedOut(food.mean() + (celsius - food.mean()) / left);
  }
}
