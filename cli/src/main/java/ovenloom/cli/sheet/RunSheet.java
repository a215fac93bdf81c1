package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.life.Life;
import ovenloom.model.plan.Plan;

/**
 * A plan as it hangs on the cupboard door: by day and minute, who does what, to what, where and until when; then how
 * good it is, and what it cannot know.
 */
public final class RunSheet {

  private RunSheet() {}

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   * @param width of a line, in characters; below 40 it is 40
   * @param colour whether a terminal is there to show bold letters
   */
  public static String of(Plan plan, int width, boolean colour) {
    Life life = Life.of(plan, 1);
    Page page = Page.of(plan.event(), width, colour);
    new ActRows(plan.event(), Acts.of(plan, life), page).write();
    return afterword(plan, life, page).toString();
  }

  /** What stands under the last act: how warm all of it is, how good the plan is, and the cautions. */
  public static List<Line> afterword(Plan plan, Life life) {
    return afterword(plan, life, new Page(Page.NARROWEST, false)).lines();
  }

  private static Page afterword(Plan plan, Life life, Page page) {
    new HowWarm(plan, life, page).write();
    new HowGood(plan, page).write();
    return page;
  }
}
