package ovenloom.model.tally;

import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.score.Figures;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Result;

/** Some runs: how they ended, and what those with a plan are like. */
public final class Group {

  private final Answers answers = new Answers();
  private final Means means = new Means();
  private @Nullable Best best;

  void add(Result result) {
    answers.add(result.answer());
    Score score = result.score();
    Figures figures = result.figures();
    if (score != null && figures != null) {
      means.add(score, figures);
      if (best == null || score.compareTo(best.score()) < 0) {
        best = new Best(result.choices(), score);
      }
    }
  }

  public Answers answers() {
    return answers;
  }

  public Means means() {
    return means;
  }

  /** Null where none has a plan. */
  public @Nullable Best best() {
    return best;
  }
}
