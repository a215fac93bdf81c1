package ovenloom.solver.search;

import java.util.Random;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Tie;

/**
 * Hears who found no room in the kitchen, and lets them choose sooner the next time; and where nothing is amiss but food
 * that waits too long, lets some of those who take it begin earlier. Finds a first plan in a crowded kitchen in a few dozen
 * tries, where changes by lot need thousands.
 */
final class Pleas {

  /** The part of the queue that who pleads may be let ahead of. */
  private static final double FAR = 0.1;

  /** How often, of those who take food that waits too long, one begins earlier. */
  private static final double RUSHES = 0.2;

  private final Trial trial;
  private final Random lot;
  private final int clock;

  /** @param clock what an earlier beginning is a multiple of, minutes */
  Pleas(Trial trial, Random lot, int clock) {
    this.trial = trial;
    this.lot = lot;
    this.clock = clock;
  }

  /** The best on the way from there, until nobody pleads or so many tries are spent. */
  Decisions hear(Decisions from, int times) {
    Decisions now = from.copy();
    Decisions best = from;
    long least = Long.MAX_VALUE;
    long shortfall = 1;
    for (int tries = 0; tries < times && shortfall > 0; tries++) {
      Bench.Tried tried = trial.of(now);
      shortfall = tried.draft().shortfall();
      if (Trial.cost(tried.score()) < least) {
        least = Trial.cost(tried.score());
        best = now.copy();
      }
      answer(now, tried.draft());
    }
    return best;
  }

  private void answer(Decisions now, Draft draft) {
    boolean onlyWaits = draft.runs()
        .runs()
        .stream()
        .allMatch(run -> draft.shortfall(run.index()) == 0 || draft.tooLong(run.index()) > 0);
    double[] wanted = new double[now.steps()];
    for (int turn = 0; turn < now.steps(); turn++) {
      int run = draft.runs().runOf().get(now.step(turn));
      wanted[now.step(turn)] = turn;
      if (onlyWaits && draft.tooLong(run) > 0 && lot.nextDouble() < RUSHES) {
        rush(now, draft, run);
      } else if (draft.shortfall(run) > 0) {
        wanted[now.step(turn)] -= 1 + lot.nextDouble() * FAR * now.steps();
      }
    }
    now.queueBy(wanted);
  }

  private void rush(Decisions now, Draft draft, int run) {
    int minutes = Math.ceilDiv(draft.tooLong(run), clock) * clock;
    for (Tie tie : draft.runs().ties()) {
      if (tie.earlier() == run) {
        Run later = draft.runs().runs().get(tie.later());
        int step = later.units().getFirst().index();
        now.setEarlier(step, Math.min(now.earlier(step) + minutes, Turn.MOST_MINUTES_EARLIER));
      }
    }
  }
}
