package ovenloom.cli.command;

import java.time.Duration;
import java.util.Locale;
import ovenloom.solver.batch.Runner;

/** One line that tells how far a batch has got and how long it will take, where somebody watches; else nothing. */
final class BatchLine implements Runner.Progress {

  private static final long NANOS_A_SECOND = 1_000_000_000L;
  private static final long NANOS_BETWEEN = NANOS_A_SECOND / 5;

  private final OneLine line;
  private final long began = System.nanoTime();
  private long last = began - NANOS_BETWEEN;
  private long fresh;

  BatchLine(Kit kit) {
    line = new OneLine(kit);
  }

  @Override
  public void report(long done, long all, boolean isNew) {
    long now = System.nanoTime();
    fresh += isNew ? 1 : 0;
    if (now - last >= NANOS_BETWEEN) {
      last = now;
      line.show(words(done, all, fresh, Duration.ofNanos(now - began)));
    }
  }

  /**
   * The line.
   *
   * @param fresh those of the done that were done in this time; the others were there before
   */
  static String words(long done, long all, long fresh, Duration time) {
    String soFar = String.format(Locale.ENGLISH, "%,d of %,d runs", done, all);
    if (fresh == 0 || time.isZero()) {
      return soFar;
    }
    double seconds = (double) time.toNanos() / NANOS_A_SECOND;
    long left = Math.round((all - done) * seconds / fresh);
    return soFar + String.format(Locale.ENGLISH, ", %.1f a second, %s left", fresh / seconds, left(left));
  }

  private static String left(long seconds) {
    if (seconds < 120) {
      return seconds + " s";
    }
    return seconds < 7_200 ? seconds / 60 + " min"
        : String.format(Locale.ENGLISH, "%.1f h", seconds / 3_600.0);
  }

  void clear() {
    line.clear();
  }
}
