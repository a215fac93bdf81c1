package ovenloom.model.audit.score;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToLongFunction;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/** What the points of a plan come from, by name: dishes, steps, ovens, or in words. */
public final class Shares {

  private final Ledger plan;

  private Shares(Ledger plan) {
    this.plan = plan;
  }

  /**
   * Of a plan.
   *
   * @param cards of its event
   */
  public static Shares of(Cards cards, Plan plan) {
    return new Shares(Ledger.of(cards, plan));
  }

  /**
   * Points of one kind, before its weight. They add up to its sum, but for what is rounded down over all of them, and for minutes in
   * which a cook sees to two things through one oven door, which count for both.
   */
  public Map<String, Long> of(Wish wish) {
    return switch (wish) {
      case FRESHNESS -> Freshness.byDish(plan);
      case SETTING -> {
        Overcooked overcooked = new Overcooked(plan);
        yield byStep(plan, run -> AsWritten.points(plan, run) + overcooked.points(run));
      }
      case CALM -> Calm.shares(plan);
      case DIAL -> DialTurns.byOven(plan);
      case ENERGY -> Energy.byHeat(plan);
      case SESSIONS -> Sessions.shares(plan);
      case STEADY -> Map.of();
    };
  }

  /** Minutes from the start of each run to its course, by dish. */
  public Map<String, Long> early() {
    Map<String, Long> byDish = new TreeMap<>();
    for (Placement run : plan.plan().placements()) {
      byDish.merge(run.dish(), Reckoning.early(plan, run), Long::sum);
    }
    return byDish;
  }

  static Map<String, Long> byStep(Ledger plan, ToLongFunction<Placement> points) {
    Map<String, Long> byStep = new TreeMap<>();
    for (Placement run : plan.plan().placements()) {
      byStep.merge(run.dish() + "/" + run.step(), points.applyAsLong(run), Long::sum);
    }
    return byStep;
  }

  static long sum(Map<String, Long> shares) {
    return shares.values().stream().mapToLong(Long::longValue).sum();
  }
}
