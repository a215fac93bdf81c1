package ovenloom.solver.search;

import java.time.Duration;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/** When a search has to end: its time is over, or somebody said stop. All lanes look at it before each schedule. */
final class Deadline {

  private final @Nullable Duration time;
  private final long began = System.nanoTime();
  private volatile boolean stopped;

  /** So long from now; absent: when somebody says stop. */
  Deadline(@Nullable Duration time) {
    this.time = time;
  }

  void stop() {
    stopped = true;
  }

  boolean isStopped() {
    return stopped;
  }

  boolean isOver() {
    return stopped || (time != null && System.nanoTime() - began >= time.toNanos());
  }

  /** In whole milliseconds; absent where only a stop ends it. */
  @Nullable
  Duration left() {
    if (time == null) {
      return null;
    }
    Duration left = time.minusNanos(System.nanoTime() - began);
    return left.isNegative() ? Duration.ZERO : left.truncatedTo(ChronoUnit.MILLIS);
  }
}
