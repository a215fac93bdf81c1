package ovenloom.cli.sheet;

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
    return new Afterword(plan, life, page).write().toString();
  }
}
