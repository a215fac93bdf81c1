package ovenloom.solver.search;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Score;
import ovenloom.solver.order.Amiss;
import ovenloom.solver.order.Order;
import ovenloom.solver.order.Price;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.FairCopy;
import ovenloom.solver.place.Runs;

/**
 * Tries orders: decodes and scores each, and remembers the one that is best level by level.
 *
 * <p>Inside the search all levels weigh into one sum, with a minute of a break worth forty points of wishes and one more for each guest, since
 * what is lost at the table grows with them: so it finds its way through plans that break a little, which levels held strictly apart would wall off. How early work is does not weigh, so
 * that it wanders among plans that are as good but for that; of those it remembers the latest. Belongs to one thread, but for
 * {@link #best} and {@link #decoded}.
 */
final class Trial implements Price {

  private static final long A_POINT = 100_000;
  private static final long POINTS_A_MINUTE_SHORT = 40;
  private static final long A_TENTH_COOLER = A_POINT;
  private static final long AN_INTERRUPTION = A_POINT / 2;

  /** What each break costs that only the judge finds. */
  private static final long A_BREAK = 30;

  /** Of so many schedules only the best is judged, if what was judged last has passed. */
  private static final int UNTIL_JUDGED = 100;

  private final long aMinuteShort;
  private final Judge judge;
  private final Benches benches;
  private final Decisions decisions;
  private final Amiss amiss;
  private final Memory memory = new Memory();
  private final AtomicLong decoded = new AtomicLong();
  private volatile @Nullable Best best;
  private @Nullable Best hope;
  private @Nullable Best lately;
  private long costLately = Long.MAX_VALUE;
  private int hoping;
  private boolean isTrusting;
  private Runnable turning = () -> {};

  /** What was tried, and its score. */
  record Best(Decisions decisions, Score score) {}

  Trial(Runs runs, Judge judge) {
    aMinuteShort = (POINTS_A_MINUTE_SHORT + runs.event().guests()) * A_POINT;
    this.judge = judge;
    benches = new Benches(runs.event(), runs.minutes());
    decisions = Decisions.open(runs.work().steps().size());
    amiss = new Amiss(runs.work().steps().size());
  }

  @Override
  public long of(Order order) {
    settleInTime();
    int next = 0;
    for (Turn turn : order.getQueue().getTurns()) {
      decisions.setStep(next++, turn.getStep());
      turn.tell(decisions);
    }
    return price();
  }

  /** What the search is told of decisions. */
  long price(Decisions others) {
    settleInTime();
    decisions.set(others);
    return price();
  }

  /** Without decoding where a schedule of the same print is remembered; but what is cheaper than all since an elite was told is decoded, to be told. */
  private long price() {
    long print = benches.of(decisions).print(decisions);
    Memory.Known known = memory.of(print);
    return known != null && known.cost() >= costLately ? again(known) : anew(print);
  }

  private long again(Memory.Known known) {
    decoded.incrementAndGet();
    hoping += hope == null ? 0 : 1;
    amiss.set(known.amiss());
    return known.price();
  }

  /** What the judge refused is not remembered: it may be asked again. */
  private long anew(long print) {
    Bench.Tried tried = tried();
    tellAmiss(tried);
    long cost = cost(tried.score());
    long price = cost + tried.draft().interruptions() * AN_INTERRUPTION;
    if (tried.score().breaks() == tried.draft().shortfall()) {
      memory.add(new Memory.Known(print, cost, price, amiss.copy()));
    }
    return price;
  }

  /** Steps that break something, and all of dishes that lose at the table. */
  private void tellAmiss(Bench.Tried tried) {
    amiss.clear();
    Draft draft = tried.draft();
    Set<String> lost = tried.score().atTheTable().keySet();
    for (BatchStep step : draft.runs().work().steps()) {
      if (lost.contains(step.dish().name())
          || draft.shortfall(draft.runs().runOf().get(step.index())) > 0) {
        amiss.add(step.index());
      }
    }
  }

  /** What came out wrong in the last schedule. */
  Amiss amiss() {
    return amiss;
  }

  /** Tries what was decided. */
  Bench.Tried of(Decisions others) {
    settleInTime();
    decisions.set(others);
    return tried();
  }

  /** The judge takes longer than a schedule: while all that it sees passes, it sees only the best of a hundred. */
  private Bench.Tried tried() {
    Bench.Tried tried = decode();
    decoded.incrementAndGet();
    remember(tried);
    Best to = hope == null ? best : hope;
    if (to == null || tried.score().compareTo(to.score()) < 0) {
      if (isTrusting && tried.score().breaks() == 0) {
        hope = kept(tried);
      } else {
        tried = judge(tried, -1);
      }
    }
    hoping += hope == null ? 0 : 1;
    return tried;
  }

  private void remember(Bench.Tried tried) {
    long cost = cost(tried.score());
    if (cost < costLately) {
      costLately = cost;
      lately = kept(tried);
    }
  }

  /** Tells an elite the cheapest that was tried since the last time, judged or not. */
  void tell(Elite elite) {
    Best cheapest = lately;
    if (cheapest != null) {
      elite.add(cheapest.decisions(), costLately);
    }
    lately = null;
    costLately = Long.MAX_VALUE;
  }

  private void settleInTime() {
    if (hoping == UNTIL_JUDGED) {
      settle();
    }
  }

  /**
   * What to do when the search should begin anew from the best: the first plan is found; or what was hoped to be the best is refused, and
   * the search would go on as if it were as good as it seemed.
   */
  void onTurn(Runnable then) {
    turning = then;
  }

  /** Has what was hoped to be the best so far judged. */
  void settle() {
    Best hoped = hope;
    hope = null;
    hoping = 0;
    if (hoped != null) {
      Best before = best;
      decisions.set(hoped.decisions());
      boolean isRefused = judge(decode(), -1).score().breaks() > 0;
      if (Objects.equals(best, before)) {
        memory.clear();
      }
      if (isRefused) {
        turning.run();
      }
    }
  }

  /** With the best so far exchanged for it, if the judge agrees and it is better, or, at 0, as good. */
  private Bench.Tried judge(Bench.Tried tried, int worst) {
    Bench.Tried judged = judged(tried);
    isTrusting = judged.score().breaks() == 0;
    if (isBest(judged.score(), worst)) {
      boolean isTheFirst = isTrusting && best != null && best.score().breaks() > 0;
      best = kept(judged);
      if (isTheFirst) {
        turning.run();
      }
    }
    return judged;
  }

  private Best kept(Bench.Tried tried) {
    Decisions good = decisions.copy();
    tried.draft().tellStarts(good);
    return new Best(good, tried.score());
  }

  private Bench.Tried decode() {
    return benches.of(decisions).of(decisions);
  }

  private boolean isBest(Score score, int worst) {
    Best known = best;
    return known == null || score.compareTo(known.score()) <= worst;
  }

  private Bench.Tried judged(Bench.Tried tried) {
    Draft draft = tried.draft();
    Score score = tried.score();
    if (score.breaks() > 0) {
      return tried;
    }
    List<Break> breaks = judge.breaks(FairCopy.of(draft, List.of(), score));
    return breaks.isEmpty() ? tried : new Bench.Tried(draft, broken(score, A_BREAK * breaks.size()));
  }

  private static Score broken(Score score, long breaks) {
    return new Score(breaks, score.atTheTable(), score.points(), score.wishes(), score.early());
  }

  /** Takes out of the best order every slack, and every choice, that does not pay, as long as there is time. */
  void tidy(BooleanSupplier over) {
    for (int step = 0; step < decisions.steps() && !over.getAsBoolean(); step++) {
      without(step, decisions::earlier, decisions::setEarlier, 0);
      without(step, decisions::bake, decisions::setBake, Decisions.OPEN);
      without(step, decisions::stay, decisions::setStay, Decisions.OPEN);
      without(step, decisions::together, decisions::setTogether, Decisions.AS_MANY_AS_MAY);
    }
  }

  private void without(int step, IntUnaryOperator decided, IntIntConsumer decide, int open) {
    decisions.set(best().decisions());
    if (decided.applyAsInt(step) != open) {
      decide.accept(step, open);
      Bench.Tried tried = decode();
      decoded.incrementAndGet();
      if (isBest(tried.score(), 0)) {
        judge(tried, 0);
      }
    }
  }

  private interface IntIntConsumer {
    void accept(int step, int value);
  }

  /** Goes on from what another search found, if it is better. */
  void take(Best other) {
    if (other.score().compareTo(best().score()) < 0) {
      best = other;
    }
  }

  /** The draft of the best order, decoded once more. */
  Draft draft() {
    decisions.set(best().decisions());
    return decode().draft();
  }

  Best best() {
    Best found = best;
    if (found == null) {
      throw new IllegalStateException("nothing has been tried yet");
    }
    return found;
  }

  boolean hasBest() {
    return best != null;
  }

  long decoded() {
    return decoded.get();
  }

  /** What a score weighs inside the search. */
  long cost(Score score) {
    return score.breaks() * aMinuteShort
        + score.atTheTableInAll() * A_TENTH_COOLER
        + score.wishes() * A_POINT;
  }
}
