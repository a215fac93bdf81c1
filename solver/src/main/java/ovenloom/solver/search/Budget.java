package ovenloom.solver.search;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * How long to search. With tries and a seed the answer is the same on any machine; with time it is not.
 *
 * @param time on the clock; absent: until the tries are done
 * @param tries schedules a seed, before the best of all is tidied; absent: until the time is over
 * @param seed of the first search
 * @param seeds how many searches run side by side
 */
public record Budget(@Nullable Duration time, @Nullable Long tries, long seed, int seeds) {

  public Budget {
    if (time == null && tries == null) {
      throw new IllegalArgumentException("a search needs an end: a time or a number of tries");
    }
    if ((tries != null && tries < 1) || seeds < 1) {
      throw new IllegalArgumentException("a search needs at least one try and one seed");
    }
  }
}
