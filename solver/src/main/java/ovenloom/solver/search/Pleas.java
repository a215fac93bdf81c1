package ovenloom.solver.search;

import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Step;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Runs;
import ovenloom.solver.place.Tie;

/**
 * Hears who found no room in the kitchen, and lets them choose sooner the next time: food that would wait too long right
 * after those who take it, anyone else a few turns sooner, and their dishes nearer to when they must be done. Finds a first plan in a crowded kitchen in a few hundred tries,
 * where changes by lot need many thousands.
 */
final class Pleas {

  /** The part of the queue that who pleads may be let ahead of. */
  private static final double FAR = 0.2;

  /** Of a hundred whose food waits too long, so many are placed right after those who take it. */
  private static final int PERCENT_RIGHT_AFTER = 50;

  /** So rarely a step is hurried for one of its dish that pleads. */
  private static final int ONE_IN = 4;

  /** After so many schedules without a better one it goes back to the best; the second time it gives up. */
  private static final int PATIENCE = 150;

  private final Trial trial;
  private final Random lot;

  Pleas(Trial trial, Random lot) {
    this.trial = trial;
    this.lot = lot;
  }

  /** The best on the way from there, until nobody pleads, so many tries are spent or the time is over; one at least. */
  Decisions hear(Decisions from, int times, BooleanSupplier over) {
    Decisions now = from.copy();
    Decisions best = from;
    long least = Long.MAX_VALUE;
    long shortfall = 1;
    int fruitless = 0;
    for (int tries = 0; tries == 0 || (tries < times && shortfall > 0 && !over.getAsBoolean()); tries++) {
      Bench.Tried tried = trial.of(now);
      tried.draft().tellStarts(now);
      shortfall = tried.draft().shortfall();
      fruitless++;
      if (trial.cost(tried.score()) < least) {
        least = trial.cost(tried.score());
        best = now.copy();
        fruitless = 0;
      }
      if (fruitless == PATIENCE) {
        now.set(best);
      } else if (fruitless == 2 * PATIENCE) {
        return best;
      } else {
        answer(now, tried.draft());
      }
    }
    return best;
  }

  private void answer(Decisions now, Draft draft) {
    double[] turns = now.turns();
    double[] wanted = turns.clone();
    for (int step = 0; step < wanted.length; step++) {
      int run = draft.runs().runOf().get(step);
      if (draft.tooLong(run) > 0 && lot.nextInt(100) < PERCENT_RIGHT_AFTER) {
        wanted[step] = Math.min(turns[step], lastTaker(draft.runs(), run, turns) + 0.5);
      } else if (draft.shortfall(run) > 0) {
        wanted[step] -= 1 + lot.nextDouble() * FAR * wanted.length;
      }
      if (draft.shortfall(run) > 0) {
        hurry(now, draft.runs(), draft.runs().runs().get(run).dish());
      }
    }
    now.queueBy(wanted);
  }

  /** Some steps of a dish are done half as long before they must be, all batches of them alike. */
  private void hurry(Decisions now, Runs runs, Dish dish) {
    int clock = runs.event().clock();
    Set<Step> hurried = dish.steps()
        .stream()
        .filter(step -> lot.nextInt(ONE_IN) == 0)
        .collect(Collectors.toSet());
    for (BatchStep each : runs.work().steps()) {
      if (each.dish().equals(dish) && hurried.contains(each.step())) {
        now.setEarlier(each.index(), now.earlier(each.index()) / 2 / clock * clock);
      }
    }
  }

  private static double lastTaker(Runs runs, int run, double[] turns) {
    double last = -1;
    for (Tie tie : runs.ties()) {
      if (tie.earlier() == run) {
        last = Math.max(last, turns[runs.runs().get(tie.later()).units().getFirst().index()]);
      }
    }
    return last;
  }
}
