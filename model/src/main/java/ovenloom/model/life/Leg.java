package ovenloom.model.life;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Ice;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;

/**
 * A stretch of a dish's life: a step, or a part of the wait after it.
 *
 * @param step whose food it is
 * @param where in a few words: {@code oven at 180 C}, {@code fridge}, {@code counter}
 * @param store the cold or hot place it is on a shelf of; absent elsewhere
 * @param waits whether it is a part of a wait
 * @param food by the minute, from the first to the one that ends it; one more than it has minutes
 */
public record Leg(BatchStep step, String where, @Nullable Store store, boolean waits, Stretch when,
    List<TemperatureProfile> food) {

  /** Where it is while its dish is served. */
  public static final String AT_THE_TABLE = "table";

  public Leg {
    food = List.copyOf(food);
  }

  /** The same, ended at a minute. */
  Leg until(int minute) {
    if (minute >= when.to()) {
      return this;
    }
    return new Leg(step, where, store, waits, new Stretch(when.from(), minute),
        food.subList(0, minute - when.from() + 1));
  }

  /** The food at a minute; at the nearest the leg has for one that is outside. */
  public TemperatureProfile at(int minute) {
    return food.get(Math.clamp(minute - when.from(), 0, food.size() - 1));
  }

  /** The coldest of it at a minute, C. */
  public double coldest(int minute) {
    return Math.min(at(minute).middle(), at(minute).surface());
  }

  /** Whether it is frozen inside and not any more outside, at a minute. */
  public boolean isThawing(int minute) {
    return at(minute).isFrozen() && at(minute).surface() > Ice.MELTS;
  }

  /** The warmest of it at a minute, C. */
  public double warmest(int minute) {
    return Math.max(at(minute).middle(), at(minute).surface());
  }
}
