package ovenloom.model.audit.score;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** A batch loses by every minute off a cold shelf beyond what it is best for, and a little by every hour on one. */
final class Freshness {

  private static final int MINUTES_A_POINT = 10;
  private static final int COLD_MINUTES_A_POINT = 360;

  private Freshness() {}

  static long points(Ledger plan) {
    return Shares.sum(byDish(plan));
  }

  static Map<String, Long> byDish(Ledger plan) {
    Map<String, Long> byDish = new TreeMap<>();
    for (Dish dish : plan.event().dishes()) {
      long points = 0;
      for (int batch = 1; batch <= dish.batches(); batch++) {
        int first = batch;
        points += points(plan, dish, plan.plan()
            .stays()
            .stream()
            .filter(stay -> stay.dish().equals(dish.name()) && stay.batches().first() == first)
            .flatMap(stay -> stay.parts().stream())
            .toList());
      }
      byDish.put(dish.name(), points);
    }
    return byDish;
  }

  /** The shares of both are added before they are rounded down. */
  private static long points(Ledger plan, Dish dish, List<Stay.Part> parts) {
    long cold = parts.stream()
        .filter(part -> isCold(plan, part.where()))
        .mapToLong(part -> part.when().minutes())
        .sum();
    long off = parts.stream().mapToLong(part -> part.when().minutes()).sum() - cold;
    long beyond = Math.max(0, off - dish.isBestFor());
    return (beyond * (COLD_MINUTES_A_POINT / MINUTES_A_POINT) + cold) / COLD_MINUTES_A_POINT;
  }

  private static boolean isCold(Ledger plan, Where where) {
    return switch (where) {
      case Where.OnShelf shelf -> {
        Store store = plan.event().kitchen().store(shelf.store());
        yield store != null && store.kind().isCold();
      }
      case Where.Counter() -> false;
      case Where.InOven oven -> false;
      case Where.OnBurner burner -> false;
    };
  }
}
