package ovenloom.cli.sheet;

import java.util.Locale;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.proof.NativeLibrary;

/** How much better than this one a plan could still be, in one sentence. */
public final class BoundText {

  private BoundText() {}

  /**
   * The sentence, in lines.
   *
   * @param width of a line, in characters
   */
  public static String of(Plan plan, int width) {
    return new Page(width, false).blank().line(sentence(plan)).toString();
  }

  private static String sentence(Plan plan) {
    Bound bound = plan.bound();
    return bound == null ? nothing() : "Proven: " + words(bound, plan.score());
  }

  /** The same of a plan that was read, whose file may say what it likes: what is proven is not proven again. */
  public static String asRead(Plan plan) {
    Bound bound = plan.bound();
    return bound == null ? "The plan's file does not say how much better a plan can be."
        : "Said by the plan's file, and not proven anew for this page: " + words(bound, plan.score());
  }

  private static String nothing() {
    return NativeLibrary.isLoaded() ? "Nothing was proven, in this time, of how much better a plan can be."
        : "Nothing is proven of how much better a plan can be: CP-SAT is not there for this system, so only window loads were looked at.";
  }

  private static String words(Bound bound, Score score) {
    if (bound.isReached(score)) {
      return "no plan is better, at the table or by its wishes.";
    }
    if (bound.isReachedAtTheTable(score)) {
      return "no plan is better at the table, and none by more than %s of wishes."
          .formatted(points(score.wishes() - bound.wishes()));
    }
    return "no plan is better by more than %s at the table."
        .formatted(points(score.atTheTableInAll() - bound.atTheTable()));
  }

  private static String points(long points) {
    return points == 1 ? "1 point" : String.format(Locale.ENGLISH, "%,d points", points);
  }
}
