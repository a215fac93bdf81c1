package ovenloom.solver.search;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Runs;
import ovenloom.solver.wish.Scorer;

/**
 * Tries orders: decodes and scores each, and remembers the one that is best level by level.
 *
 * <p>Inside the search all levels weigh into one sum, with a break worth forty points of wishes: so it finds its way
 * through plans that break a little, which levels held strictly apart would wall off. Belongs to one thread, but for
 * {@link #best} and {@link #decoded}.
 */
final class Trial {

  private static final long A_POINT = 100_000;
  private static final long A_MINUTE_SHORT = 40 * A_POINT;
  private static final long A_MINUTE_COOLING = 5 * A_POINT;

  private final Decoder decoder;
  private final Scorer scorer;
  private final int[] queue;
  private final int[] earlier;
  private final int[] choice;

  private final AtomicLong decoded = new AtomicLong();
  private volatile @Nullable Best best;

  /** An order that was tried, and its score. */
  record Best(List<Integer> queue, List<Integer> earlier, List<Integer> choice, Score score) {}

  Trial(Runs runs) {
    decoder = new Decoder(runs);
    scorer = new Scorer(runs);
    int all = runs.runs().size();
    queue = new int[all];
    earlier = new int[all];
    choice = new int[all];
  }

  int waysToBake(int run) {
    return decoder.choicesOf(run);
  }

  /** What an order costs. */
  long of(Order order) {
    int next = 0;
    for (Turn turn : order.getQueue().getTurns()) {
      queue[next++] = turn.getRun();
      earlier[turn.getRun()] = turn.minutesEarlier();
      choice[turn.getRun()] = turn.wayToBake();
    }
    return cost(score());
  }

  private Score score() {
    Score score = scorer.of(decoder.decode(queue, earlier, choice));
    decoded.incrementAndGet();
    Best known = best;
    if (known == null || score.compareTo(known.score()) < 0) {
      best = new Best(listOf(queue), listOf(earlier), listOf(choice), score);
    }
    return score;
  }

  /** Takes out of the best order every slack, and every choice, that does not pay. */
  void tidy() {
    for (int run = 0; run < queue.length; run++) {
      without(earlier, run, 0);
      without(choice, run, -1);
    }
  }

  private void without(int[] decided, int run, int open) {
    restore(best());
    if (decided[run] != open) {
      decided[run] = open;
      keepIfNoWorse();
    }
  }

  private void keepIfNoWorse() {
    Score known = best().score();
    Score score = score();
    if (score.compareTo(known) == 0) {
      best = new Best(listOf(queue), listOf(earlier), listOf(choice), score);
    }
  }

  private void restore(Best from) {
    for (int i = 0; i < queue.length; i++) {
      queue[i] = from.queue().get(i);
      earlier[i] = from.earlier().get(i);
      choice[i] = from.choice().get(i);
    }
  }

  /** Decodes the best order once more. */
  Draft draft() {
    restore(best());
    return decoder.decode(queue, earlier, choice);
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

  private static long cost(Score score) {
    return score.breaks() * A_MINUTE_SHORT
        + score.atTheTableInAll() * A_MINUTE_COOLING
        + score.wishes() * A_POINT
        + score.early();
  }

  private static List<Integer> listOf(int[] numbers) {
    return Arrays.stream(numbers).boxed().toList();
  }
}
