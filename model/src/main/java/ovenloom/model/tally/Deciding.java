package ovenloom.model.tally;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

/** How often each dish decides how a run ends. */
public final class Deciding {

  /**
   * A dish that decides.
   *
   * @param withAPlan runs in which it loses most, or costs most hands in the last hour
   * @param without runs in which it stands in the way of a plan
   */
  public record Decider(String dish, long withAPlan, long without) {
    public long runs() {
      return withAPlan + without;
    }

    private Decider and(Decider other) {
      return new Decider(dish, withAPlan + other.withAPlan, without + other.without);
    }
  }

  private final Map<String, Decider> byDish = new TreeMap<>();

  void add(Result result) {
    String dish = result.decides();
    if (dish != null) {
      boolean isAPlan = result.answer() == Answer.PLAN;
      byDish.merge(dish, new Decider(dish, isAPlan ? 1 : 0, isAPlan ? 0 : 1), Decider::and);
    }
  }

  /** The most frequent first. */
  public List<Decider> dishes() {
    return byDish.values()
        .stream()
        .sorted(Comparator.comparingLong(Decider::runs).reversed().thenComparing(Decider::dish))
        .toList();
  }
}
