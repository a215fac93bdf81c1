package ovenloom.model.audit.score;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;

/**
 * A plan beside its work, with what was decided for each step at hand.
 *
 * @param cards of its work
 * @param runs by the step's index in the work; a step that was forgotten has none
 * @param stays by the step's index
 */
record Ledger(Cards cards, Plan plan, Map<Integer, Placement> runs, Map<Integer, Stay> stays) {

  static Ledger of(Cards cards, Plan plan) {
    Work work = cards.work();
    Map<Integer, Placement> runs = new HashMap<>();
    Map<Integer, Stay> stays = new HashMap<>();
    for (BatchStep step : work.steps()) {
      plan.placements()
          .stream()
          .filter(run -> isOf(step, run.dish(), run.step()) && run.batches().holds(step.batches()))
          .findFirst()
          .ifPresent(run -> runs.put(step.index(), run));
      plan.stays()
          .stream()
          .filter(stay -> isOf(step, stay.dish(), stay.step()) && stay.batches().holds(step.batches()))
          .findFirst()
          .ifPresent(stay -> stays.put(step.index(), stay));
    }
    return new Ledger(cards, plan, runs, stays);
  }

  Work work() {
    return cards.work();
  }

  Event event() {
    return work().event();
  }

  /** What the menu says of a run's step; absent where it knows none such. */
  @Nullable
  BatchStep stepOf(Placement run) {
    for (BatchStep step : work().steps()) {
      if (isOf(step, run.dish(), run.step())) {
        return step;
      }
    }
    return null;
  }

  private static boolean isOf(BatchStep step, String dish, String name) {
    return step.dish().name().equals(dish) && step.step().name().equals(name);
  }

  @Nullable
  Placement run(BatchStep step) {
    return runs.get(step.index());
  }

  @Nullable
  Stay stay(BatchStep step) {
    return stays.get(step.index());
  }
}
