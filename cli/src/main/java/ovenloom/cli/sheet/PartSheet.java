package ovenloom.cli.sheet;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.life.Life;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/** A part of a run sheet, as one cook wants it, or whoever stands before one oven, or all for the next hour. */
public final class PartSheet {

  private static final String REST = """
      This is a part. The whole sheet also says how warm each dish is at the table, and what a plan cannot know.""";

  private final Plan plan;
  private final View view;
  private final Page page;
  private final Clock clock;
  private final List<Act> acts;

  private PartSheet(Plan plan, View view, Page page) {
    this.plan = plan;
    this.view = view;
    this.page = page;
    this.clock = new Clock(plan.event().calendar());
    this.acts = view.of(Acts.of(plan, Life.of(plan, 1)));
  }

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   * @param width of a line, in characters; below 40 it is 40
   * @param colour whether a terminal is there to show bold letters
   */
  public static String of(Plan plan, Part part, int width, boolean colour) {
    PartSheet sheet = new PartSheet(plan, part.view(), Page.of(plan.event(), width, colour));
    if (part.when() == null) {
      sheet.all();
    } else {
      sheet.during(part.when());
    }
    return sheet.page.blank().line(REST).toString();
  }

  private void all() {
    page.line(view.sentence());
    if (acts.isEmpty()) {
      page.blank().line("Nothing is done there.");
    }
    rows(acts);
  }

  private void rows(List<Act> some) {
    new ActRows(plan.event(), some, page).write();
  }

  private void during(Stretch when) {
    String times = clock.date(when.from()) + ", " + clock.time(when.from()) + " to "
        + clock.time(when.to(), when.from()) + ".";
    if (!view.sentence().isEmpty()) {
      page.line(view.sentence());
    }
    page.line(times);
    List<Going> going = new UnderWay(Book.of(plan), when.from()).all()
        .stream()
        .filter(view::concerns)
        .toList();
    List<Act> during = acts.stream().filter(act -> when.contains(act.at())).toList();
    underWay(going, when.from());
    rows(during);
    if (during.isEmpty()) {
      page.blank().line(nothing(going.isEmpty(), when));
    }
  }

  private void underWay(List<Going> going, int at) {
    if (going.isEmpty()) {
      return;
    }
    page.blank().underlined("Under way at " + clock.time(at));
    int width = Math.min(page.width() / 3,
        going.stream().mapToInt(each -> Wrapped.length(each.thing())).max().orElse(0));
    String before = "";
    for (Going each : going) {
      String thing = each.thing().equals(before) ? "" : each.thing();
      page.row(List.of(new Cell(thing, width, true), new Cell(each.words(), 0, false)));
      before = each.thing();
    }
  }

  private String nothing(boolean isIdle, Stretch when) {
    Act next = first(act -> act.at() >= when.to());
    String idle = isIdle ? "Nothing is under way, and nothing is" : "Nothing is";
    if (next != null) {
      return idle + " to be done before " + clock.time(next.at(), when.from()) + ".";
    }
    return isIdle ? "Nothing is under way, and all is done." : "Nothing more is to be done.";
  }

  private @Nullable Act first(Predicate<Act> which) {
    return acts.stream().filter(which).findFirst().orElse(null);
  }
}
