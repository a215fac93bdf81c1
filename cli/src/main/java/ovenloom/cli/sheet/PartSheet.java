package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.life.Life;
import ovenloom.model.plan.Plan;

/** A part of a run sheet, as one cook wants it, or whoever stands before one oven. */
public final class PartSheet {

  private static final String REST = """
      This is a part. The whole sheet also says how warm each dish is at the table, and what a plan cannot know.""";

  private PartSheet() {}

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   * @param width of a line, in characters; below 40 it is 40
   * @param colour whether a terminal is there to show bold letters
   */
  public static String of(Plan plan, View view, int width, boolean colour) {
    Page page = Page.of(plan.event(), width, colour).line(view.sentence());
    List<Act> acts = view.of(Acts.of(plan, Life.of(plan, 1)));
    new ActRows(plan.event(), acts, page).write();
    return page.blank().line(acts.isEmpty() ? "Nothing is done there. " + REST : REST).toString();
  }
}
