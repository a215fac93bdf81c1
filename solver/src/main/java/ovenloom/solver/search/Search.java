package ovenloom.solver.search;

import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Audit;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.FairCopy;
import ovenloom.solver.place.Runs;

/**
 * Searches for a plan: one search a seed, side by side. At fixed counts of schedules all go on from near
 * the best of them; in the end the best wins, the first seed where two are as good.
 */
public final class Search {

  private static final int MILLIS_BETWEEN_LOOKS = 100;

  /** Schedules a seed from one exchange to the next. */
  private static final long A_ROUND = 5_000;

  private final Runs runs;
  private final Budget budget;
  private final List<Lane> lanes;
  private final long began = System.nanoTime();

  private Search(Event event, Budget budget) {
    runs = Runs.of(event);
    this.budget = budget;
    lanes = LongStream.range(0, budget.seeds())
        .mapToObj(seed -> new Lane(runs, budget.seed() + seed))
        .toList();
  }

  /**
   * Searches until the budget is spent or somebody says stop.
   *
   * @param sources the files the event came from, for the plan
   * @param stop asked a few times a second
   * @return the best that was found, audited
   */
  public static Found find(
      Event event, List<Plan.Source> sources, Budget budget, Progress progress, BooleanSupplier stop) {
    Search search = new Search(event, budget);
    try (ExecutorService workers = Executors.newFixedThreadPool(budget.seeds())) {
      search.run(workers, progress, stop);
    }
    return search.found(sources);
  }

  private void run(ExecutorService workers, Progress progress, BooleanSupplier stop) {
    long tries = budget.tries() == null ? Long.MAX_VALUE : budget.tries();
    boolean first = true;
    for (long left = tries; left > 0 && (first || !isOver(stop)); left -= A_ROUND) {
      Budget round = new Budget(left(), Math.min(left, A_ROUND), budget.seed(), budget.seeds());
      all(workers, lane -> lane.search(round), progress, stop);
      exchange();
      tell(progress);
      first = false;
    }
    all(workers, lane -> lane.trial().tidy(), progress, stop);
  }

  private boolean isOver(BooleanSupplier stop) {
    Duration left = left();
    return stop.getAsBoolean() || (left != null && left.isZero());
  }

  private void all(
      ExecutorService workers, java.util.function.Consumer<Lane> work, Progress progress,
      BooleanSupplier stop) {
    List<Future<?>> running = new ArrayList<>();
    lanes.forEach(lane -> running.add(workers.submit(() -> work.accept(lane))));
    running.forEach(each -> await(each, progress, stop));
  }

  private void await(Future<?> running, Progress progress, BooleanSupplier stop) {
    while (true) {
      try {
        running.get(MILLIS_BETWEEN_LOOKS, TimeUnit.MILLISECONDS);
        return;
      } catch (TimeoutException notYet) {
        tell(progress);
        if (stop.getAsBoolean()) {
          lanes.forEach(Lane::stop);
        }
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
        lanes.forEach(Lane::stop);
        return;
      } catch (ExecutionException failed) {
        throw new IllegalStateException("the search failed", failed.getCause());
      }
    }
  }

  private void tell(Progress progress) {
    if (lanes.stream().map(Lane::trial).allMatch(Trial::hasBest)) {
      progress.report(best().best().score(), decoded(), left());
    }
  }

  private void exchange() {
    Trial.Best best = best().best();
    lanes.forEach(lane -> lane.trial().take(best));
  }

  private Trial best() {
    Trial best = lanes.getFirst().trial();
    for (Lane lane : lanes) {
      if (lane.trial().best().score().compareTo(best.best().score()) < 0) {
        best = lane.trial();
      }
    }
    return best;
  }

  private long decoded() {
    return lanes.stream().mapToLong(lane -> lane.trial().decoded()).sum();
  }

  /** In whole milliseconds. */
  private @Nullable Duration left() {
    Duration time = budget.time();
    if (time == null) {
      return null;
    }
    Duration left = time.minusNanos(System.nanoTime() - began);
    return left.isNegative() ? Duration.ZERO : left.truncatedTo(ChronoUnit.MILLIS);
  }

  private Found found(List<Plan.Source> sources) {
    Trial best = best();
    Score score = best.best().score();
    Draft draft = best.draft();
    Plan plan = FairCopy.of(draft, sources, score);
    return new Found(plan, Audit.of(runs.event(), plan), Shortages.of(draft), decoded());
  }
}
