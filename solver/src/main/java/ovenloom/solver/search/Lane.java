package ovenloom.solver.search;

import ai.timefold.solver.core.api.solver.Solver;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.solver.order.Meeting;
import ovenloom.solver.order.Order;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;

/** The search of one seed, in rounds. Belongs to one thread at a time, but for {@link #stop}. */
final class Lane {

  /** Keeps the seeds of one round apart from those of the next. */
  private static final int ROUND = 1_000;

  private final Runs runs;
  private final long seed;
  private final Deadline deadline;
  private final Turns turns;
  private final List<Meeting> meetings;
  private final Trial trial;
  private final Beginnings beginnings;
  private final boolean isHasty;
  private int round;
  private volatile @Nullable Solver<Order> solver;

  /**
   * That of a seed.
   *
   * @param elite of all searches side by side; it changes only while none of them runs
   * @param isAhead whether what is to be cool begins with a head start; each time it begins anew, it is the other way
   * @param isHasty whether it comes down soon to the nearest good plan, and begins with what is to be hot
   */
  Lane(Runs runs, long seed, Judge judge, Deadline deadline, Elite elite, boolean isAhead, boolean isHasty) {
    this.runs = runs;
    this.seed = seed;
    this.deadline = deadline;
    this.isHasty = isHasty;
    Decoder decoder = new Decoder(runs);
    turns = new Turns(runs, decoder);
    meetings = turns.meetings();
    trial = new Trial(runs, judge);
    beginnings = new Beginnings(runs, decoder, trial, elite, deadline, isAhead, isHasty);
  }

  Trial trial() {
    return trial;
  }

  /** What to begin with for once. */
  void beginWith(Decisions decisions) {
    beginnings.beginWith(decisions);
  }

  /** Searches on from near the best so far, until so many schedules are tried or the time is over; one at least. */
  void search(long tries) {
    long end = trial.decoded() + tries;
    do {
      searchOn(end);
    } while (trial.decoded() < end && !deadline.isOver());
  }

  /** Until so many schedules are tried in all, or the search should begin anew from the best so far. */
  private void searchOn(long end) {
    long lot = seed + (long) round * ROUND;
    List<Turn> start = inTurn(beginnings.next(new Random(lot), end));
    long left = end - trial.decoded();
    if (left > 0 && !deadline.isOver()) {
      Solver<Order> next = Searches.of(left, lot, isHasty);
      solver = next;
      trial.onTurn(next::terminateEarly);
      next.solve(new Order(trial, start, runs.event().clock(), meetings));
    }
    trial.settle();
    round++;
  }

  private List<Turn> inTurn(Decisions decisions) {
    List<Turn> open = turns.open();
    for (Turn turn : open) {
      turn.set(decisions);
      turn.watch(trial.amiss());
    }
    return new ArrayList<>(
        IntStream.range(0, decisions.steps()).map(decisions::step).mapToObj(open::get).toList());
  }

  /** Has to be said again and again: Timefold does not hear it before its search has begun. */
  void stop() {
    Solver<Order> running = solver;
    if (running != null) {
      running.terminateEarly();
    }
  }
}
