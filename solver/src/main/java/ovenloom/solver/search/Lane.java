package ovenloom.solver.search;

import ai.timefold.solver.core.api.solver.Solver;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Score;
import ovenloom.solver.order.Meeting;
import ovenloom.solver.order.Order;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Runs;

/** The search of one seed. Belongs to one thread at a time, but for {@link #stop}. */
final class Lane {

  /** Tries of a round that may go into hearing pleas, while there is no plan. */
  private static final int PLEAS = 1_000;

  /** Rounds without a better plan after which a search begins anew. */
  private static final int PATIENCE = 3;

  /** Keeps the seeds of one round apart from those of the next. */
  private static final int ROUND = 1_000;

  private final Runs runs;
  private final long seed;
  private final Deadline deadline;
  private final Turns turns;
  private final List<Meeting> meetings;
  private final Trial trial;
  private final Decisions first;
  private int round;
  private int fruitless;
  private @Nullable Score last;
  private volatile @Nullable Solver<Order> solver;

  Lane(Runs runs, long seed, Judge judge, Deadline deadline) {
    this.runs = runs;
    this.seed = seed;
    this.deadline = deadline;
    turns = new Turns(runs);
    meetings = turns.meetings();
    trial = new Trial(runs, judge);
    first = FirstOrder.of(runs);
  }

  Trial trial() {
    return trial;
  }

  /** Searches on from near the best so far, until so many schedules are tried or the time is over; one at least. */
  void search(long tries) {
    long end = trial.decoded() + tries;
    do {
      searchOn(end);
    } while (trial.wasTooHopeful() && trial.decoded() < end && !deadline.isOver());
  }

  /** Until so many schedules are tried in all; or anew from the best, where it went after one that was refused. */
  private void searchOn(long end) {
    List<Turn> start = start(end - trial.decoded());
    long left = end - trial.decoded();
    if (left > 0 && !deadline.isOver()) {
      Solver<Order> next = Searches.of(left, seed + (long) round * ROUND);
      solver = next;
      trial.onceTooHopeful(next::terminateEarly);
      next.solve(new Order(trial, start, runs.event().clock(), meetings));
    }
    trial.settle();
    round++;
  }

  private List<Turn> start(long tries) {
    Random lot = new Random(seed + (long) round * ROUND);
    Decisions from = trial.hasBest() && !isStuck() ? Shake.of(trial.best().decisions(), lot)
        : first.copy();
    if (!trial.hasBest() || trial.best().score().breaks() > 0) {
      from = new Pleas(trial, lot).hear(from, (int) Math.min(PLEAS, tries), deadline::isOver);
    }
    List<Turn> open = turns.open();
    for (Turn turn : open) {
      turn.set(from);
      turn.watch(trial.amiss());
    }
    return new ArrayList<>(IntStream.range(0, from.steps()).map(from::step).mapToObj(open::get).toList());
  }

  /** Whether the best has not changed for some rounds; then one search begins anew, and after it counts again. */
  private boolean isStuck() {
    Score now = trial.best().score();
    fruitless = now.equals(last) ? fruitless + 1 : 0;
    last = now;
    boolean isStuck = fruitless == PATIENCE;
    fruitless = isStuck ? 0 : fruitless;
    return isStuck;
  }

  /** Has to be said again and again: Timefold does not hear it before its search has begun. */
  void stop() {
    Solver<Order> running = solver;
    if (running != null) {
      running.terminateEarly();
    }
  }
}
