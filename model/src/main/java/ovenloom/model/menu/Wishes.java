package ovenloom.model.menu;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** How much each wish weighs, 0 to 10; one that is not named weighs 1. */
public record Wishes(Map<Wish, Integer> weights) {

  /** All weigh 1. */
  public static final Wishes EVEN = new Wishes(Map.of());

  public Wishes {
    Map<Wish, Integer> all = new EnumMap<>(Wish.class);
    for (Wish wish : Wish.values()) {
      all.put(wish, weights.getOrDefault(wish, 1));
    }
    weights = Collections.unmodifiableMap(all);
    if (weights.values().stream().anyMatch(weight -> weight < 0 || weight > 10)) {
      throw new IllegalArgumentException("a wish weighs 0 to 10, not " + weights);
    }
  }

  public int weight(Wish wish) {
    return weights.getOrDefault(wish, 1);
  }
}
