package ovenloom.model.menu;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Pace;

/**
 * How long a step takes.
 *
 * @param written minutes as written, perhaps with seconds a portion; the longest is what a plan books
 * @param upTo the planner may choose to let it run as long as this, minutes; absent: it may not
 */
public record Takes(Pace written, @Nullable Integer upTo) {

  /** The written minutes, the longest, for so many portions. */
  public int minutes(int portions) {
    return written.minutesFor(portions).most();
  }

  /** The most minutes a plan may book for so many portions. */
  public int most(int portions) {
    Integer chosen = upTo;
    return chosen == null ? minutes(portions) : Math.max(chosen, minutes(portions));
  }
}
