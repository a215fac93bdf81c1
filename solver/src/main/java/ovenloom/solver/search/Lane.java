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

  /** Orders that a hasty search tries to begin with, and tries for the rest to find room in each. */
  private static final int HOT_STARTS = 8;
  private static final int PLEAS_OF_A_START = 100;

  /**
   * So often a dish that loses at the table chooses before all others, where no more of them lose; and tries for the rest to find room then.
   */
  private static final int A_LOSER_ONE_IN = 3;
  private static final int MOST_LOSERS = 2;
  private static final int PLEAS_FOR_A_LOSER = 400;

  /** Where more lose, of a hundred rounds so many begin with dishes put elsewhere in the queue; and tries for that. */
  private static final int PERCENT_REINSERTED = 70;
  private static final int TRIES_TO_REINSERT = 1_000;

  /** Rounds without a better plan after which a search begins anew. */
  private static final int PATIENCE = 3;

  /** Keeps the seeds of one round apart from those of the next. */
  private static final int ROUND = 1_000;

  private final Runs runs;
  private final long seed;
  private final Deadline deadline;
  private final Elite elite;
  private final Turns turns;
  private final FromTheHeat hot;
  private final List<Meeting> meetings;
  private final Trial trial;
  private final Decisions first;
  private final Decisions ahead;
  private @Nullable Decisions given;
  private final boolean isHasty;
  private boolean isAhead;
  private boolean hadAPlan;
  private int round;
  private int fruitless;
  private @Nullable Score last;
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
    this.elite = elite;
    turns = new Turns(runs);
    meetings = turns.meetings();
    trial = new Trial(runs, judge);
    hot = new FromTheHeat(runs.work());
    first = FirstOrder.of(runs);
    ahead = first.copy();
    new HeadStart(runs).tell(ahead);
    this.isAhead = isAhead;
    this.isHasty = isHasty;
  }

  Trial trial() {
    return trial;
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
    List<Turn> start = start(end);
    long left = end - trial.decoded();
    if (left > 0 && !deadline.isOver()) {
      Solver<Order> next = Searches.of(left, seed + (long) round * ROUND, isHasty);
      solver = next;
      trial.onTurn(next::terminateEarly);
      next.solve(new Order(trial, start, runs.event().clock(), meetings));
    }
    trial.settle();
    round++;
  }

  private List<Turn> start(long end) {
    Random lot = new Random(seed + (long) round * ROUND);
    boolean isTheFirstPlan = hasAPlan() && !hadAPlan;
    hadAPlan = hasAPlan();
    boolean isNew = !trial.hasBest() || (!isTheFirstPlan && isStuck());
    boolean isHot = isNew && isHasty && given == null && trial.decoded() + 1 < end && !deadline.isOver();
    Decisions best = isNew ? anew() : trial.best().decisions();
    Decisions from = isNew || isTheFirstPlan ? best : next(trial.best(), lot, end);
    if (isHot) {
      from = bestOfHot(best, lot, end);
    } else if (!hasAPlan()) {
      from = hear(from, PLEAS, lot, end);
    }
    if ((isNew || isTheFirstPlan) && trial.decoded() < end && !deadline.isOver()) {
      from = new CooledInTime(trial, runs.work(), ahead).give(from, end, deadline::isOver);
    }
    List<Turn> open = turns.open();
    for (Turn turn : open) {
      turn.set(from);
      turn.watch(trial.amiss());
    }
    return new ArrayList<>(IntStream.range(0, from.steps()).map(from::step).mapToObj(open::get).toList());
  }

  /** Where what is to be hot chooses first, in several orders. */
  private Decisions bestOfHot(Decisions others, Random lot, long end) {
    HotFirst hotFirst = new HotFirst(runs, hot, turns.open());
    Decisions best = others;
    long least = Long.MAX_VALUE;
    for (int start = 0; start < HOT_STARTS; start++) {
      if (start == 0 || (trial.decoded() + 1 < end && !deadline.isOver())) {
        Decisions heard = hear(hotFirst.of(others, lot), PLEAS_OF_A_START, lot, end - 1);
        long cost = trial.cost(trial.of(heard).score());
        best = cost < least ? heard : best;
        least = Math.min(cost, least);
      }
    }
    return best;
  }

  private Decisions next(Trial.Best best, Random lot, long end) {
    int losers = best.score().atTheTable().size();
    boolean areFew = hasAPlan() && losers > 0 && losers <= MOST_LOSERS;
    if (areFew && lot.nextInt(A_LOSER_ONE_IN) == 0) {
      return hear(new LosersFirst(runs.work(), ahead).of(best, lot), PLEAS_FOR_A_LOSER, lot, end);
    }
    if (hasAPlan() && losers > MOST_LOSERS && lot.nextInt(100) < PERCENT_REINSERTED) {
      int tries = (int) Math.min(TRIES_TO_REINSERT, end - trial.decoded());
      return new Reinsertion(trial, runs.event(), hot, turns.open(), lot).from(best.decisions(), tries,
          deadline::isOver);
    }
    boolean isAChild = elite.isPlural() && lot.nextBoolean();
    return isAChild ? elite.child(runs.work(), lot) : Shake.of(best.decisions(), lot);
  }

  private Decisions hear(Decisions from, int most, Random lot, long end) {
    int tries = (int) Math.min(most, end - trial.decoded());
    return new Pleas(trial, lot).hear(from, tries, deadline::isOver);
  }

  private boolean hasAPlan() {
    return trial.hasBest() && trial.best().score().breaks() == 0;
  }

  /** What to begin with for once. */
  void beginWith(Decisions decisions) {
    given = decisions;
  }

  private Decisions anew() {
    Decisions once = given;
    if (once != null) {
      given = null;
      return once.copy();
    }
    Decisions from = isAhead ? ahead : first;
    isAhead = !isAhead;
    return from.copy();
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
