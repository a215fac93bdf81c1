package ovenloom.model.audit;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Keeps;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * What a wait has spent, in one place, of the time that food keeps there.
 *
 * @param minutes there, less the free ones on the counter
 * @param limit minutes it keeps there; 0 where it does not
 * @param free minutes on top of the limit, that count for nothing
 */
record Spent(String place, int minutes, int limit, int free) {

  private record Place(String name, int limit, int free) {}

  /**
   * In each place of a stay, as far as it lies in a gap; those in which nothing is spent are left out.
   *
   * @param most the link's own, which overrides what food keeps on the counter
   */
  static List<Spent> in(Stay stay, Stretch gap, @Nullable Keeps stated, @Nullable Integer most) {
    Keeps keeps = stated == null ? Keeps.HARDLY : stated;
    Map<Place, Integer> minutes = new LinkedHashMap<>();
    for (Stay.Part part : stay.parts()) {
      Stretch there = part.when().shared(gap);
      if (there != null) {
        minutes.merge(place(part.where(), keeps, most), there.minutes(), Integer::sum);
      }
    }
    return minutes.entrySet()
        .stream()
        .map(each -> new Spent(each.getKey().name(), each.getValue() - each.getKey().free(),
            each.getKey().limit(), each.getKey().free()))
        .filter(each -> each.minutes() > 0)
        .toList();
  }

  private static Place place(Where where, Keeps keeps, @Nullable Integer most) {
    return switch (where) {
      case Where.Counter() ->
        new Place("the counter", limit(most == null ? keeps.counter() : most), Keeps.FREE_ON_THE_COUNTER);
      case Where.OnShelf shelf -> new Place(shelf.store(), limit(keeps.stores().get(shelf.store())), 0);
      case Where.InOven oven -> new Place(oven.oven(), limit(keeps.oven()), 0);
      case Where.OnBurner burner -> new Place("the burner", limit(keeps.burner()), 0);
    };
  }

  private static int limit(@Nullable Integer stated) {
    return stated == null ? 0 : stated;
  }

  /** Minutes too many, in the place that has most of its time spent; 0 where all shares together are at most one. */
  static int over(List<Spent> all) {
    int whereItDoesNot = all.stream()
        .filter(each -> each.limit == 0)
        .mapToInt(Spent::minutes)
        .max()
        .orElse(0);
    if (whereItDoesNot > 0) {
      return whereItDoesNot;
    }
    BigFraction shares = all.stream().map(Spent::share).reduce(BigFraction.ZERO, BigFraction::add);
    BigFraction over = shares.subtract(1);
    if (over.signum() <= 0) {
      return 0;
    }
    int limit = all.stream().max(Comparator.comparing(Spent::share)).orElseThrow().limit;
    return roundedUp(over.multiply(limit));
  }

  private static int roundedUp(BigFraction minutes) {
    BigInteger parts = minutes.getDenominator();
    return minutes.getNumerator().add(parts).subtract(BigInteger.ONE).divide(parts).intValue();
  }

  private BigFraction share() {
    return BigFraction.of(minutes, limit);
  }

  @Override
  public String toString() {
    String there = place + ": " + (minutes + free) + " min";
    if (limit == 0) {
      return there + ", and nothing says that it keeps there" + (free == 0 ? "" : " for more than " + free);
    }
    return there + " of " + (limit + free) + (free == 0 ? "" : " (" + limit + ", and " + free + " free)");
  }
}
