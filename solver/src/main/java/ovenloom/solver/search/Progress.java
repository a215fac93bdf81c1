package ovenloom.solver.search;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Score;

/** Hears how a search goes, a few times a second. */
@FunctionalInterface
public interface Progress {

  /**
   * How far it has got.
   *
   * @param best the best score so far; its first level is 0 once there is a plan
   * @param schedules decoded so far, by all seeds
   * @param left time left; absent where only tries end the search
   */
  void report(Score best, long schedules, @Nullable Duration left);
}
