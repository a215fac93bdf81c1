package ovenloom.solver.search;

import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;

/** What each round of a search begins with: all anew, or something near the best so far. */
final class Beginnings {

  /** Tries of a round that may go into hearing pleas, while there is no plan. */
  private static final int PLEAS = 1_000;

  /** Orders that a hasty search tries to begin with; and tries for the rest to find room, when another order is begun with. */
  private static final int HOT_STARTS = 8;
  private static final int PLEAS_OF_A_START = 100;

  /**
   * So often a dish that loses at the table chooses before all others, where no more of them lose, or no more but for those that are to be hot;
   * and tries for the rest to find room then.
   */
  private static final int A_LOSER_ONE_IN = 3;
  private static final int MOST_LOSERS = 2;
  private static final int PLEAS_FOR_A_LOSER = 400;

  /** Where more lose, and some of them are to be hot, of a hundred other rounds so many begin with dishes put elsewhere in the queue; and tries for that. */
  private static final int PERCENT_REINSERTED = 70;
  private static final int TRIES_TO_REINSERT = 1_000;

  /** Rounds without a better plan after which a search begins anew. */
  private static final int PATIENCE = 3;

  private final Runs runs;
  private final Decoder decoder;
  private final Trial trial;
  private final Elite elite;
  private final Deadline deadline;
  private final FromTheHeat hot;
  private final Decisions first;
  private final Decisions ahead;
  private final boolean isHasty;
  private boolean isAhead;
  private @Nullable Decisions given;
  private boolean hadAPlan;
  private int fruitless;
  private @Nullable Score last;

  /**
   * Those of one search.
   *
   * @param isAhead whether what is to be cool begins with a head start; each time it begins anew, it is the other way
   * @param isHasty whether it begins with what is to be hot
   */
  Beginnings(Runs runs, Decoder decoder, Trial trial, Elite elite, Deadline deadline, boolean isAhead,
      boolean isHasty) {
    this.runs = runs;
    this.decoder = decoder;
    this.trial = trial;
    this.elite = elite;
    this.deadline = deadline;
    this.isAhead = isAhead;
    this.isHasty = isHasty;
    hot = new FromTheHeat(runs.work());
    first = FirstOrder.of(runs);
    ahead = first.copy();
    new HeadStart(runs).tell(ahead);
  }

  /** What to begin with for once. */
  void beginWith(Decisions decisions) {
    given = decisions;
  }

  /**
   * That of the next round.
   *
   * @param end schedules that may be tried in all until that round is over
   */
  Decisions next(Random lot, long end) {
    boolean isTheFirstPlan = hasAPlan() && !hadAPlan;
    hadAPlan = hasAPlan();
    if (isTheFirstPlan) {
      return cooled(trial.best().decisions(), lot, end);
    }
    if (!trial.hasBest() || isStuck()) {
      return cooled(anew(lot, end), lot, end);
    }
    return hasAPlan() ? fromAPlan(trial.best(), lot, end) : heard(near(lot), PLEAS, lot, end);
  }

  private boolean hasAPlan() {
    return trial.hasBest() && trial.best().score().breaks() == 0;
  }

  private boolean isLeft(long end) {
    return trial.decoded() < end && !deadline.isOver();
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

  private Decisions anew(Random lot, long end) {
    Decisions from = given;
    boolean isHot = from == null && isHasty && isLeft(end - 1);
    if (from == null) {
      from = isAhead ? ahead : first;
      isAhead = !isAhead;
    }
    given = null;
    if (isHot) {
      return bestOfHot(from, lot, end);
    }
    return hasAPlan() ? from.copy() : heard(from.copy(), PLEAS, lot, end);
  }

  /** Where what is to be hot chooses first, in several orders. */
  private Decisions bestOfHot(Decisions others, Random lot, long end) {
    HotFirst hotFirst = new HotFirst(runs, hot, decoder);
    Decisions best = others;
    long least = Long.MAX_VALUE;
    for (int start = 0; start < HOT_STARTS; start++) {
      if (start == 0 || isLeft(end - 1)) {
        Decisions heard = heard(hotFirst.of(others, lot), PLEAS_OF_A_START, lot, end - 1);
        long cost = trial.cost(trial.of(heard).score());
        best = cost < least ? heard : best;
        least = Math.min(cost, least);
      }
    }
    return best;
  }

  private Decisions fromAPlan(Trial.Best best, Random lot, long end) {
    List<Dish> losers = Losers.of(runs.event(), best.score());
    List<Dish> notHot = losers.stream().filter(dish -> hot.of(dish).isEmpty()).toList();
    List<Dish> few = losers.size() <= MOST_LOSERS ? losers : notHot;
    if (!few.isEmpty() && few.size() <= MOST_LOSERS && lot.nextInt(A_LOSER_ONE_IN) == 0) {
      Dish loser = few.get(lot.nextInt(few.size()));
      return heard(new LosersFirst(runs.work(), ahead).of(best.decisions(), loser), PLEAS_FOR_A_LOSER, lot,
          end);
    }
    if (losers.size() > MOST_LOSERS && losers.size() > notHot.size()
        && lot.nextInt(100) < PERCENT_REINSERTED) {
      int tries = (int) Math.min(TRIES_TO_REINSERT, end - trial.decoded());
      return new Reinsertion(trial, runs.event(), hot, decoder, lot).from(best.decisions(), tries,
          deadline::isOver);
    }
    return near(lot);
  }

  /** A child of two good plans, or the best one shaken. */
  private Decisions near(Random lot) {
    boolean isAChild = elite.isPlural() && lot.nextBoolean();
    return isAChild ? elite.child(runs.work(), lot) : Shake.of(trial.best().decisions(), lot);
  }

  private Decisions heard(Decisions from, int most, Random lot, long end) {
    int tries = (int) Math.min(most, end - trial.decoded());
    return new Pleas(trial, lot).hear(from, tries, deadline::isOver);
  }

  /** With a head start for what comes too warm; and where that is not enough, with first choice for it. */
  private Decisions cooled(Decisions from, Random lot, long end) {
    if (!isLeft(end)) {
      return from;
    }
    Decisions cooler = new CooledInTime(trial, runs.work(), ahead).give(from, end, deadline::isOver);
    long until = Math.min(end - 1, trial.decoded() + PLEAS_FOR_A_LOSER);
    return isLeft(until) ? withFirstChoice(cooler, lot, until) : cooler;
  }

  /** Each dish that loses, but for what is to be hot, chooses before all others for a try, and keeps that if all is better. */
  private Decisions withFirstChoice(Decisions from, Random lot, long until) {
    Decisions best = from;
    Score least = trial.of(from).score();
    for (Dish dish : Losers.of(runs.event(), least)) {
      if (hot.of(dish).isEmpty() && least.atTheTable().containsKey(dish.name()) && isLeft(until)) {
        Decisions next = heard(new LosersFirst(runs.work(), ahead).of(best, dish), PLEAS_OF_A_START, lot,
            until);
        Score score = trial.of(next).score();
        best = trial.cost(score) < trial.cost(least) ? next : best;
        least = trial.cost(score) < trial.cost(least) ? score : least;
      }
    }
    return best;
  }
}
