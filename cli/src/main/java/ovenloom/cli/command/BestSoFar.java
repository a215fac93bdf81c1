package ovenloom.cli.command;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Score;
import ovenloom.solver.proof.Proof;
import ovenloom.solver.search.Progress;

/** Passes progress on, and keeps the best score that was told. */
final class BestSoFar implements Progress {

  private final Progress next;
  private volatile @Nullable Score best;

  BestSoFar(Progress next) {
    this.next = next;
  }

  @Override
  public void report(Score score, long schedules, @Nullable Duration left) {
    best = score;
    next.report(score, schedules, left);
  }

  /** Whether it is shown that nothing better will come. */
  boolean isProven(Proof proof) {
    Score now = best;
    return now != null && proof.isBest(now);
  }
}
