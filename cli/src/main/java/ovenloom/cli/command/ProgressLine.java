package ovenloom.cli.command;

import java.time.Duration;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Harmless;
import ovenloom.model.plan.Score;
import ovenloom.solver.search.Progress;

/** One line that tells how far a search has got, where somebody watches; else nothing. */
final class ProgressLine implements Progress {

  private static final long NANOS_BETWEEN = 200_000_000L;

  private final OneLine line;
  private final String which;
  private final long began = System.nanoTime();
  private long last = began - NANOS_BETWEEN;

  /**
   * Its line.
   *
   * @param which of several searches it is; empty for the only one
   */
  ProgressLine(Kit kit, String which) {
    line = new OneLine(kit);
    this.which = which.isEmpty() ? "" : Harmless.text(which) + ": ";
  }

  @Override
  public synchronized void report(Score best, long schedules, @Nullable Duration left) {
    long now = System.nanoTime();
    if (now - last >= NANOS_BETWEEN) {
      last = now;
      long seconds = Math.max(1, (now - began) / 1_000_000_000L);
      line.show(which + words(best, schedules, schedules / seconds, left));
    }
  }

  static String words(Score best, long schedules, long aSecond, @Nullable Duration left) {
    String time = left == null ? "" : (left.toSeconds() + 1) + " s left, ";
    String quality = best.breaks() > 0 ? "no plan yet"
        : String.format(Locale.ENGLISH, "a plan: table %,d, wishes %,d", best.atTheTableInAll(),
            best.wishes());
    return String.format(Locale.ENGLISH, "%s%s (%,d schedules, %,d a second)", time, quality, schedules,
        aSecond);
  }

  synchronized void clear() {
    line.clear();
  }
}
