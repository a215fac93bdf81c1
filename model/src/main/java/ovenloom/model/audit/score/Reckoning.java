package ovenloom.model.audit.score;

import java.util.EnumMap;
import java.util.Map;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;

/** Counts a plan's score again. */
public final class Reckoning {

  private Reckoning() {}

  /**
   * The score of a plan, as its runs, stays, oven logs and washes tell it; what the plan says of it is not looked at.
   *
   * @return with no breaks, which the rules count, and no points for {@link Wish#STEADY}, which a plan alone cannot tell;
   * a figure for every hot dish and every wish
   */
  public static Score of(Event event, Plan plan) {
    return of(new Cards(Work.of(event)), plan);
  }

  /** The same, by the cards of its event. */
  public static Score of(Cards cards, Plan plan) {
    Ledger ledger = Ledger.of(cards, plan);
    Map<Wish, Long> points = new EnumMap<>(Wish.class);
    for (Wish wish : Wish.values()) {
      points.put(wish, points(wish, ledger));
    }
    return Score.of(0, AtTheTable.of(ledger), points, ledger.event().wishes(), early(ledger));
  }

  private static long points(Wish wish, Ledger plan) {
    return switch (wish) {
      case FRESHNESS -> Freshness.points(plan);
      case SETTING -> AsWritten.points(plan) + Overcooked.points(plan);
      case CALM -> Calm.points(plan);
      case DIAL -> DialTurns.points(plan);
      case ENERGY -> Energy.points(plan);
      case SESSIONS -> Sessions.points(plan);
      case STEADY -> 0;
    };
  }

  private static long early(Ledger plan) {
    return plan.plan().placements().stream().mapToLong(run -> early(plan, run)).sum();
  }

  /** Minutes from the start of a run to its course, but for serving. */
  static long early(Ledger plan, Placement run) {
    BatchStep step = plan.stepOf(run);
    return step == null || step.step().serve() ? 0
        : plan.event().courseOf(step.dish()).at() - run.when().from();
  }
}
