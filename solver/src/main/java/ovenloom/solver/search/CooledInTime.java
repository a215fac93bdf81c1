package ovenloom.solver.search;

import java.util.List;
import java.util.function.BooleanSupplier;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Decisions;

/**
 * Gives dishes that come to the table too warm a head start, one after the other, and lets those keep it by which all is better: a crowded
 * kitchen has no room for all of them at once.
 */
final class CooledInTime {

  /** Parts of a head start: the whole, if it may be. */
  private static final List<Integer> PARTS = List.of(1, 2, 4);

  private final Trial trial;
  private final Work work;
  private final Decisions ahead;

  /** @param ahead the head start of each */
  CooledInTime(Trial trial, Work work, Decisions ahead) {
    this.trial = trial;
    this.work = work;
    this.ahead = ahead;
  }

  /** From a schedule on, what loses most first; until so many schedules are tried in all or the time is over. */
  Decisions give(Decisions from, long end, BooleanSupplier over) {
    Decisions best = from;
    Bench.Tried tried = trial.of(from);
    long least = trial.cost(tried.score());
    for (Dish dish : Losers.of(work.event(), tried.score())) {
      for (int part : PARTS) {
        Decisions next = with(best, dish, part);
        if (trial.decoded() < end && !over.getAsBoolean()) {
          long cost = trial.cost(trial.of(next).score());
          best = cost < least ? next : best;
          least = Math.min(cost, least);
        }
      }
    }
    return best;
  }

  private Decisions with(Decisions from, Dish dish, int part) {
    int clock = work.event().clock();
    Decisions next = from.copy();
    for (BatchStep step : work.steps()) {
      int head = ahead.earlier(step.index()) / part / clock * clock;
      if (step.dish().equals(dish) && head > next.earlier(step.index())) {
        next.setEarlier(step.index(), head);
      }
    }
    return next;
  }
}
