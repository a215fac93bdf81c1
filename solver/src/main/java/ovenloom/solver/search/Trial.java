package ovenloom.solver.search;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Score;
import ovenloom.solver.order.Order;
import ovenloom.solver.order.Price;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Runs;

/**
 * Tries orders: decodes and scores each, and remembers the one that is best level by level.
 *
 * <p>Inside the search all levels weigh into one sum, with a break worth forty points of wishes: so it finds its way
 * through plans that break a little, which levels held strictly apart would wall off. Belongs to one thread, but for
 * {@link #best} and {@link #decoded}.
 */
final class Trial implements Price {

  private static final long A_POINT = 100_000;
  private static final long A_MINUTE_SHORT = 40 * A_POINT;
  private static final long A_MINUTE_COOLING = 5 * A_POINT;

  private final Benches benches;
  private final Decisions decisions;
  private final AtomicLong decoded = new AtomicLong();
  private volatile @Nullable Best best;

  /** What was tried, and its score. */
  record Best(Decisions decisions, Score score) {}

  Trial(Runs runs) {
    benches = new Benches(runs.event());
    decisions = Decisions.open(runs.work().steps().size());
  }

  @Override
  public long of(Order order) {
    int next = 0;
    for (Turn turn : order.getQueue().getTurns()) {
      decisions.setStep(next++, turn.getStep());
      turn.tell(decisions);
    }
    return cost(tried().score());
  }

  /** Tries what was decided. */
  Bench.Tried of(Decisions others) {
    decisions.set(others);
    return tried();
  }

  private Bench.Tried tried() {
    Bench.Tried tried = benches.of(decisions).of(decisions);
    decoded.incrementAndGet();
    Best known = best;
    if (known == null || tried.score().compareTo(known.score()) < 0) {
      best = new Best(decisions.copy(), tried.score());
    }
    return tried;
  }

  /** Takes out of the best order every slack, and every choice, that does not pay. */
  void tidy() {
    for (int step = 0; step < decisions.steps(); step++) {
      without(step, decisions::earlier, decisions::setEarlier, 0);
      without(step, decisions::bake, decisions::setBake, Decisions.OPEN);
      without(step, decisions::stay, decisions::setStay, Decisions.OPEN);
    }
  }

  private void without(int step, IntUnaryOperator decided, IntIntConsumer decide, int open) {
    decisions.set(best().decisions());
    if (decided.applyAsInt(step) != open) {
      decide.accept(step, open);
      Score known = best().score();
      Score score = tried().score();
      if (score.compareTo(known) <= 0) {
        best = new Best(decisions.copy(), score);
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

  /** Decodes the best order once more. */
  Draft draft() {
    return of(best().decisions()).draft();
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

  static long cost(Score score) {
    return score.breaks() * A_MINUTE_SHORT
        + score.atTheTableInAll() * A_MINUTE_COOLING
        + score.wishes() * A_POINT
        + score.early();
  }
}
