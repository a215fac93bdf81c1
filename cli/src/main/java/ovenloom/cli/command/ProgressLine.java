package ovenloom.cli.command;

import java.time.Duration;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Score;
import ovenloom.solver.search.Progress;

/** One line that tells how far a search has got, where somebody watches; else nothing. */
final class ProgressLine implements Progress {

  private static final long NANOS_BETWEEN = 200_000_000L;

  private final Kit kit;
  private final long began = System.nanoTime();
  private long last = began - NANOS_BETWEEN;
  private int written;

  ProgressLine(Kit kit) {
    this.kit = kit;
  }

  @Override
  public synchronized void report(Score best, long schedules, @Nullable Duration left) {
    long now = System.nanoTime();
    if (kit.terminal().progress() && now - last >= NANOS_BETWEEN) {
      last = now;
      long seconds = Math.max(1, (now - began) / 1_000_000_000L);
      show(words(best, schedules, schedules / seconds, left));
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
    if (written > 0) {
      show("");
      kit.err().print("\r");
      kit.err().flush();
    }
  }

  private void show(String words) {
    String line = words.substring(0, Math.min(words.length(), kit.terminal().width() - 1));
    kit.err().print("\r" + line + " ".repeat(Math.max(0, written - line.length())));
    kit.err().flush();
    written = line.length();
  }
}
