package ovenloom.solver.bench;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Score;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/** Puts kitchens to the product's own search, on two processors, and says what came of it. */
final class Planning {

  private static final int SIDE_BY_SIDE = 2;
  private static final double NANOS = 1e9;

  private Planning() {}

  /** What the best plan costs that is found in so long: lost at the table and wishes, which weigh alike in the search. */
  static Measured best(Event event, Duration time, long seed, double reference, double bound) {
    long began = System.nanoTime();
    Found found = Search.find(event, List.of(), budget(time, seed), (best, schedules, left) -> {},
        () -> false);
    return new Measured(found.isAPlan() ? points(found.plan().score()) : Measured.NOTHING, reference, bound,
        since(began));
  }

  static double points(Score score) {
    return score.atTheTableInAll() + score.wishes();
  }

  /** When the first plan is there that the audit passes, in seconds. */
  static Measured first(Event event, Duration most, long seed) {
    long began = System.nanoTime();
    AtomicLong first = new AtomicLong();
    Found found = Search.find(event, List.of(), budget(most, seed), (best, schedules, left) -> {
      if (best.breaks() == 0) {
        first.compareAndSet(0, System.nanoTime());
      }
    }, () -> first.get() != 0);
    double seconds = first.get() == 0 ? since(began) : (first.get() - began) / NANOS;
    return new Measured(found.isAPlan() ? seconds : Measured.NOTHING, Double.NaN, Double.NaN, seconds);
  }

  private static Budget budget(Duration time, long seed) {
    return new Budget(time, null, seed, SIDE_BY_SIDE);
  }

  static double since(long began) {
    return (System.nanoTime() - began) / NANOS;
  }
}
