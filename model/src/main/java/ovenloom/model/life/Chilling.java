package ovenloom.model.life;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.heat.Body;
import ovenloom.model.heat.Cooling;
import ovenloom.model.heat.TemperatureProfile;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Mass;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;

/**
 * How the food of a step cools in a cold place, by layers, where it comes there straight from the heat: the worst that a plan could
 * make of it.
 */
public final class Chilling {

  /** By which the first minutes, in which it cools otherwise, are over. */
  private static final int A_WHILE = 30;

  /** What a kilogram of ice takes up as it melts, J. A value of physics; row T27 of the facts. */
  private static final double TO_MELT = 334_000;

  private static final double MILLIGRAMS_A_KILOGRAM = 1e6;

  private final Cards cards;
  private final Places places;

  /** By these cards. */
  public Chilling(Cards cards) {
    this.cards = cards;
    places = new Places(cards.work().event().kitchen(), cards, cards.lids(Unsaid.LOOSE));
  }

  /** How hot the food of a step may be as it comes: as the last steps on the heat leave it, C; as the room where there are none. */
  public double hottest(BatchStep step) {
    double hottest = cards.work().event().kitchen().room().inCelsius();
    for (BatchLink link : cards.work().into(step.index())) {
      BatchStep before = cards.work().steps().get(link.from());
      if (link.carriesFood() && before.dish().food()) {
        hottest = Math.max(hottest, cards.heats(before) ? cards.done(before) : hottest(before));
      }
    }
    return hottest;
  }

  /**
   * How warm its warmest part is, C, by the minute.
   *
   * @param minutes in the first place
   * @param then where it goes after; null: nowhere
   * @param most minutes in both
   */
  public double[] warmest(BatchStep step, Store first, int minutes, @Nullable Store then, int most) {
    List<TemperatureProfile> food = new ArrayList<>();
    food.add(TemperatureProfile.uniform(body(step, first), hottest(step)));
    cool(step, first, minutes, food);
    if (then != null) {
      food.set(food.size() - 1, food.getLast().stretched(body(step, then)));
      cool(step, then, most - minutes, food);
    }
    return food.stream().mapToDouble(now -> Math.max(now.middle(), now.surface())).toArray();
  }

  /** Whether somebody must stir it there, every so many minutes; 0 where nobody need. */
  public int stirredEvery(BatchStep step, Store place) {
    return places.isStirred(step, place) ? Spell.Stirred.EVERY : 0;
  }

  /** Kilograms of ice that melt while the food of a step gets as cold as its bath, rounded up. */
  public int ice(BatchStep step, Store bath) {
    double kelvins = hottest(step) - bath.holds().inCelsius();
    double capacity = cards.substance().body(step).material().heatCapacity();
    return (int) Math.ceil(melted(new Weights(cards).kilograms(step), capacity, kelvins));
  }

  /** Kilograms of ice that melt by so many kilograms of food that cool by so many kelvins. */
  static double melted(double kilograms, double capacity, double kelvins) {
    return kilograms * capacity * kelvins / TO_MELT;
  }

  /** Whether the food of a step is no more than a place takes of warm food at a time. */
  public boolean isLightEnough(BatchStep step, Store place) {
    Mass most = place.warmLoad();
    return most == null || new Weights(cards).kilograms(step) * MILLIGRAMS_A_KILOGRAM <= most.milligrams();
  }

  /** Minutes until its warmest part is as cold as that, C; one more than the most if it takes longer. */
  public int minutesTo(BatchStep step, Store place, double celsius, int most) {
    double[] warmest = warmest(step, place, most, null, most);
    int minute = 0;
    while (minute < warmest.length && warmest[minute] > celsius) {
      minute++;
    }
    return minute;
  }

  private Body body(BatchStep step, Store store) {
    return cards.substance().body(step, store);
  }

  private void cool(BatchStep step, Store store, int minutes, List<TemperatureProfile> food) {
    Spell spell = places.inStore(step, store, minutes);
    for (int minute = 0; minute < minutes; minute++) {
      food.add(Spell.next(spell, minute, food.getLast()));
    }
  }

  /** How the mean of food comes down in a place. */
  static Cooling cooling(Cards cards, BatchStep step, Store store) {
    Body body = cards.substance().body(step, store);
    if (store.kind() != Store.Kind.ICE_BATH) {
      return cards.cooling(body, cards.lids(Unsaid.LOOSE).in(step, store));
    }
    Chilling chilling = new Chilling(cards);
    double water = store.holds().inCelsius();
    List<TemperatureProfile> food = new ArrayList<>();
    food.add(TemperatureProfile.uniform(body, water + 1));
    chilling.cool(step, store, 2 * A_WHILE, food);
    return Cooling.steady(water,
        StrictMath.log((food.get(A_WHILE).mean() - water) / (food.getLast().mean() - water)) / A_WHILE);
  }
}
