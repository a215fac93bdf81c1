package ovenloom.solver.search;

import ai.timefold.solver.core.api.solver.Solver;
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
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Audit;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.place.FairCopy;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Runs;

/** Searches for a plan: one search a seed, side by side; the best of them wins, the first seed where two are as good. */
public final class Search {

  private static final int MILLIS_BETWEEN_LOOKS = 100;

  private final Runs runs;
  private final Budget budget;
  private final List<Trial> trials;
  private final List<Solver<Order>> solvers = new ArrayList<>();
  private final long began = System.nanoTime();

  private Search(Event event, Budget budget) {
    runs = Runs.of(event);
    this.budget = budget;
    trials = IntStream.range(0, budget.seeds()).mapToObj(seed -> new Trial(runs)).toList();
    for (int i = 0; i < budget.seeds(); i++) {
      solvers.add(Searches.with(budget, budget.seed() + i));
    }
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
    search.run(progress, stop);
    return search.found(sources);
  }

  private void run(Progress progress, BooleanSupplier stop) {
    try (ExecutorService workers = Executors.newFixedThreadPool(trials.size())) {
      List<Future<?>> searches = new ArrayList<>();
      for (int i = 0; i < trials.size(); i++) {
        Trial trial = trials.get(i);
        Solver<Order> solver = solvers.get(i);
        searches.add(workers.submit(() -> search(trial, solver)));
      }
      for (Future<?> each : searches) {
        await(each, progress, stop);
      }
    }
  }

  private void search(Trial trial, Solver<Order> solver) {
    List<Turn> turns = new ArrayList<>();
    for (Run run : FirstOrder.of(runs)) {
      turns.add(new Turn(run.index(), trial.waysToBake(run.index())));
    }
    solver.solve(new Order(trial, turns));
    trial.tidy();
  }

  private void await(Future<?> search, Progress progress, BooleanSupplier stop) {
    while (true) {
      try {
        search.get(MILLIS_BETWEEN_LOOKS, TimeUnit.MILLISECONDS);
        return;
      } catch (TimeoutException notYet) {
        if (trials.stream().allMatch(Trial::hasBest)) {
          progress.report(best().best().score(), decoded(), left());
        }
        if (stop.getAsBoolean()) {
          solvers.forEach(Solver::terminateEarly);
        }
      } catch (InterruptedException interrupted) {
        Thread.currentThread().interrupt();
        solvers.forEach(Solver::terminateEarly);
        return;
      } catch (ExecutionException failed) {
        throw new IllegalStateException("the search failed", failed.getCause());
      }
    }
  }

  private Trial best() {
    Trial best = trials.getFirst();
    for (Trial trial : trials) {
      if (trial.best().score().compareTo(best.best().score()) < 0) {
        best = trial;
      }
    }
    return best;
  }

  private long decoded() {
    return trials.stream().mapToLong(Trial::decoded).sum();
  }

  private @Nullable Duration left() {
    Duration time = budget.time();
    if (time == null) {
      return null;
    }
    Duration left = time.minusNanos(System.nanoTime() - began);
    return left.isNegative() ? Duration.ZERO : left;
  }

  private Found found(List<Plan.Source> sources) {
    Trial best = best();
    Score score = best.best().score();
    Plan plan = FairCopy.of(best.draft(), sources, score);
    return new Found(plan, Audit.of(runs.event(), plan), decoded());
  }
}
