package ovenloom.solver.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.FairCopy;
import ovenloom.solver.place.Runs;

/**
 * Searches for a plan: one search a seed, side by side. At fixed counts of schedules all go on from near
 * the best of them, or from a child of two of the good ones; in the end the best wins, the first seed where two are as good.
 */
public final class Search {

  private static final long MILLIS_BETWEEN_LOOKS = 100;
  private static final long MILLIS_AFTER_THE_END = 5;

  /** Schedules a seed from one exchange to the next. */
  private static final long A_ROUND = 2_000;

  /** The part of the time that is kept for tidying, and how much at most; also what a stop leaves for it. */
  private static final int TIDYING = 20;
  private static final Duration MOST_TIDYING = Duration.ofMillis(500);

  private final Budget budget;
  private final Judge judge;
  private final Progress progress;
  private final BooleanSupplier stop;
  private final Deadline deadline;
  private final Elite elite = new Elite();
  private final List<Lane> lanes;
  private boolean interrupted;

  private Search(Runs runs, Budget budget, Judge judge, Progress progress, BooleanSupplier stop) {
    this.budget = budget;
    this.judge = judge;
    this.progress = progress;
    this.stop = stop;
    Duration time = budget.time();
    deadline = new Deadline(time == null ? null : time.minus(tidying(time)));
    lanes = LongStream.range(0, budget.seeds())
        .mapToObj(seed -> new Lane(runs, budget.seed() + seed, judge, deadline, elite, seed % 2 == 0,
            seed % 2 == 1))
        .toList();
  }

  private static Duration tidying(Duration time) {
    Duration part = time.dividedBy(TIDYING);
    return part.compareTo(MOST_TIDYING) < 0 ? part : MOST_TIDYING;
  }

  /**
   * Searches until the budget is spent, somebody says stop or the thread is interrupted; one schedule a seed is tried in
   * any case.
   *
   * @param sources the files the event came from, for the plan
   * @param stop asked a few times a second
   * @return the best that was found, audited
   */
  public static Found find(
      Event event, List<Plan.Source> sources, Budget budget, Progress progress, BooleanSupplier stop) {
    return find(event, sources, budget, null, progress, stop);
  }

  /**
   * The same, from where a plan is of nearly the same event.
   *
   * @param from absent: as any search begins
   */
  public static Found find(
      Event event, List<Plan.Source> sources, Budget budget, @Nullable Plan from, Progress progress,
      BooleanSupplier stop) {
    Runs runs = Runs.of(event);
    Search search = new Search(runs, budget, Judge.audit(runs.minutes().cards()), progress, stop);
    if (from != null) {
      Decisions like = LikeAPlan.of(runs, from);
      search.lanes.forEach(lane -> lane.beginWith(like));
    }
    return search.found(sources);
  }

  static Found find(
      Runs runs, List<Plan.Source> sources, Budget budget, Judge judge, Progress progress,
      BooleanSupplier stop) {
    return new Search(runs, budget, judge, progress, stop).found(sources);
  }

  private Found found(List<Plan.Source> sources) {
    try (ExecutorService workers = Executors.newFixedThreadPool(budget.seeds())) {
      run(workers);
    }
    Found found = best(sources);
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    return found;
  }

  private void run(ExecutorService workers) {
    long left = budget.tries() == null ? Long.MAX_VALUE : budget.tries();
    do {
      long tries = Math.min(left, A_ROUND);
      each(lanes, workers, deadline, lane -> lane.search(tries));
      exchange();
      look(deadline);
      left -= tries;
    } while (left > 0 && !deadline.isOver());
    Deadline tidied = new Deadline(budget.time() == null && !deadline.isStopped() ? null : tidying());
    each(List.of(best()), workers, tidied, lane -> lane.trial().tidy(tidied::isOver));
  }

  /** What is left for tidying, once the search is over. */
  private Duration tidying() {
    Duration time = budget.time();
    return time == null || deadline.isStopped() ? MOST_TIDYING : tidying(time);
  }

  private void each(List<Lane> some, ExecutorService workers, Deadline end, Consumer<Lane> work) {
    List<Future<?>> running = new ArrayList<>();
    some.forEach(lane -> running.add(workers.submit(() -> work.accept(lane))));
    running.forEach(one -> await(one, end));
  }

  private void await(Future<?> running, Deadline end) {
    while (true) {
      try {
        running.get(untilNextLook(end), TimeUnit.MILLISECONDS);
        return;
      } catch (TimeoutException notYet) {
        look(end);
      } catch (InterruptedException interrupt) {
        interrupted = true;
        stop(end);
      } catch (ExecutionException failed) {
        stop(end);
        throw rethrown(failed);
      }
    }
  }

  private static long untilNextLook(Deadline end) {
    Duration left = end.left();
    long longest = left == null ? MILLIS_BETWEEN_LOOKS : Math.min(left.toMillis() + 1, MILLIS_BETWEEN_LOOKS);
    return end.isOver() ? MILLIS_AFTER_THE_END : longest;
  }

  private void look(Deadline end) {
    tell();
    if (!deadline.isStopped() && stop.getAsBoolean()) {
      deadline.stop();
      end.stop();
    }
    if (end.isOver()) {
      lanes.forEach(Lane::stop);
    }
  }

  private void stop(Deadline end) {
    deadline.stop();
    end.stop();
    lanes.forEach(Lane::stop);
  }

  /** What a lane threw, as it was thrown: the caller knows what to do about too little memory. */
  private static RuntimeException rethrown(ExecutionException failed) {
    if (failed.getCause() instanceof Error error) {
      throw error;
    }
    return failed.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(failed);
  }

  private void tell() {
    if (lanes.stream().map(Lane::trial).allMatch(Trial::hasBest)) {
      progress.report(best().trial().best().score(), decoded(), deadline.left());
    }
  }

  private void exchange() {
    Trial.Best best = best().trial().best();
    lanes.forEach(lane -> {
      lane.trial().tell(elite);
      lane.trial().take(best);
    });
  }

  private Lane best() {
    Lane best = lanes.getFirst();
    for (Lane lane : lanes) {
      if (lane.trial().best().score().compareTo(best.trial().best().score()) < 0) {
        best = lane;
      }
    }
    return best;
  }

  private Found best(List<Plan.Source> sources) {
    Trial best = best().trial();
    Score score = best.best().score();
    Draft draft = best.draft();
    Plan plan = FairCopy.of(draft, sources, score);
    List<Break> breaks = judge.breaks(plan);
    return new Found(plan, breaks, Shortages.of(draft), !breaks.isEmpty() && draft.shortfall() == 0,
        decoded());
  }

  private long decoded() {
    return lanes.stream().mapToLong(lane -> lane.trial().decoded()).sum();
  }
}
