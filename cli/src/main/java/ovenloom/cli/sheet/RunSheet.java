package ovenloom.cli.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.life.Life;
import ovenloom.model.plan.Plan;

/**
 * A plan as it hangs on the cupboard door: by day and minute, who does what, to what, where and until when; then how
 * good it is, and what it cannot know.
 */
public final class RunSheet {

  private static final int NARROWEST = 40;
  private static final int TIME = 5;
  private static final int PAUSE = 30;

  private final Plan plan;
  private final Clock clock;
  private final Life life;
  private final List<Act> acts;
  private final Page page;

  private RunSheet(Plan plan, Page page) {
    this.plan = plan;
    this.clock = new Clock(plan.event().calendar());
    this.life = Life.of(plan, 1);
    this.acts = Acts.of(plan, life);
    this.page = page;
  }

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   * @param width of a line, in characters; below 40 it is 40
   * @param colour whether a terminal is there to show bold letters
   */
  public static String of(Plan plan, int width, boolean colour) {
    RunSheet sheet = new RunSheet(plan, new Page(Math.max(NARROWEST, width), colour));
    sheet.title();
    sheet.days();
    afterword(plan, sheet.life, sheet.page);
    return sheet.page.toString();
  }

  /** What stands under the last act: how warm all of it is, how good the plan is, and the cautions. */
  public static List<Line> afterword(Plan plan, Life life) {
    return afterword(plan, life, new Page(NARROWEST, false)).lines();
  }

  private static Page afterword(Plan plan, Life life, Page page) {
    new HowWarm(plan, life, page).write();
    new HowGood(plan, page).write();
    return page;
  }

  private void title() {
    Title title = new Title(plan.event());
    page.heading(title.name()).line(title.sentence());
  }

  private void days() {
    @Nullable
    LocalDate day = null;
    int before = 0;
    for (Act act : acts) {
      if (!clock.day(act.at()).equals(day)) {
        day = clock.day(act.at());
        page.blank().underlined(clock.heading(day));
        before = Integer.MIN_VALUE;
      } else if (act.at() - before >= PAUSE || act.turn() == Act.Turn.TABLE) {
        page.blank();
      }
      page.row(cells(act, act.at() != before));
      before = act.at();
    }
  }

  private List<Cell> cells(Act act, boolean showTime) {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell(showTime ? clock.column(act.at()) : "", TIME, false));
    if (plan.event().cooks().size() > 1) {
      cells.add(new Cell(act.who(), cooksWidth(), false));
    }
    cells.add(new Cell(act.thing(), thingsWidth(), true));
    cells.add(new Cell(act.words(), 0, act.turn() == Act.Turn.TABLE));
    return cells;
  }

  private int cooksWidth() {
    int longest = acts.stream()
        .mapToInt(act -> Wrapped.length(act.who()))
        .max()
        .orElse(0);
    return Math.min(longest, page.width() / 7);
  }

  private int thingsWidth() {
    int longest = acts.stream().mapToInt(act -> Wrapped.length(act.thing())).max().orElse(0);
    return Math.min(longest, page.width() / 4);
  }
}
