package ovenloom.model.menu;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.Fraction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Quantity;

/**
 * Something on the menu, or a chore that is done for it.
 *
 * @param food false for a chore (laying the table): no food, so nothing waits anywhere
 * @param servings how much of it is made
 * @param arrives how it comes to the table
 * @param tags raw, ready-to-eat, the allergens it contains or is free of, and words of the cook's own, lower case
 * @param waves whether later batches are due later, while the first are eaten
 * @param servedOver minutes, where the dish differs from its course
 * @param bestFor minutes it may wait off a cold shelf before it is less good; absent: by {@code arrives}
 * @param matter what it is as heat meets it
 * @param ingredients what it is made of, for shopping
 */
public record Dish(
    String name,
    String course,
    boolean food,
    Servings servings,
    Arrives arrives,
    List<String> tags,
    boolean waves,
    @Nullable Integer servedOver,
    @Nullable Integer bestFor,
    Matter matter,
    Map<String, Quantity> ingredients,
    List<Step> steps) {

  /**
   * How much of a dish is made.
   *
   * @param guests whom it is for
   * @param aGuest portions a guest
   * @param sparePercent made on top
   * @param aBatch portions a batch makes; absent: one batch makes all
   */
  public record Servings(int guests, Fraction aGuest, int sparePercent, @Nullable Integer aBatch) {

    /** Portions needed, rounded up after the spare is added. */
    public int portions() {
      return ceil(aGuest.multiply(guests).multiply(Fraction.of(100 + sparePercent, 100)));
    }

    private static int ceil(Fraction amount) {
      return Math.ceilDiv(amount.getNumerator(), amount.getDenominator());
    }
  }

  /** Minutes a hot dish may wait before it is less good, where a file does not say. */
  public static final int HOT_IS_BEST_FOR = 15;

  /** Minutes any other dish may wait off a cold shelf before it is less good, where a file does not say. */
  public static final int OTHERS_ARE_BEST_FOR = 240;

  public Dish {
    tags = List.copyOf(tags);
    ingredients = Collections.unmodifiableMap(new LinkedHashMap<>(ingredients));
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("\"" + name + "\" needs a step");
    }
  }

  /** How many batches, all alike. */
  public int batches() {
    Integer aBatch = servings.aBatch();
    return aBatch == null ? 1 : Math.max(1, Math.ceilDiv(servings.portions(), aBatch));
  }

  /** Portions in each batch. */
  public int portionsInABatch() {
    return Math.ceilDiv(servings.portions(), batches());
  }

  /** Minutes it may wait off a cold shelf, in all, before it is less good. */
  public int isBestFor() {
    Integer own = bestFor;
    if (own != null) {
      return own;
    }
    return arrives == Arrives.HOT ? HOT_IS_BEST_FOR : OTHERS_ARE_BEST_FOR;
  }

  /** The same, with the step of that name done otherwise. */
  public Dish with(Step instead) {
    List<Step> others = steps.stream()
        .map(each -> each.name().equals(instead.name()) ? instead : each)
        .toList();
    return new Dish(name, course, food, servings, arrives, tags, waves, servedOver, bestFor, matter,
        ingredients, others);
  }

  public Step step(String wanted) {
    return steps.stream().filter(step -> step.name().equals(wanted)).findFirst().orElseThrow();
  }
}
