package ovenloom.cli.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Page.Cell;
import ovenloom.model.life.Life;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
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
    this.acts = acts(Book.of(plan), life);
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
    new HowWarm(plan, sheet.life, sheet.page).write();
    new HowGood(plan, sheet.page).write();
    return sheet.page.toString();
  }

  private static List<Act> acts(Book book, Life life) {
    Words words = new Words(book.event().kitchen());
    FreeHands hands = new FreeHands(book.plan());
    List<DishAct> dishes = new ArrayList<>();
    for (Armful armful : Armful.of(book)) {
      dishes.addAll(new Start(book, words, armful).acts());
    }
    for (Placement run : book.plan().placements()) {
      dishes.addAll(new Middle(book, run).acts());
      dishes.addAll(new ProbeActs(book, hands, run).acts());
    }
    dishes.addAll(new CoolingActs(book, hands, life).acts());
    FoodActs food = new FoodActs(book, words);
    book.work().steps().forEach(step -> dishes.addAll(food.after(step)));
    List<Act> acts = new ArrayList<>(DishAct.told(dishes, new Leaving(book, words)));
    for (OvenLog log : book.plan().ovens()) {
      acts.addAll(new OvenActs(book, words, log).acts());
    }
    acts.addAll(new PlaceActs(book, hands).acts());
    acts.addAll(new WashActs(book).acts());
    acts.addAll(new TableActs(book.event()).acts());
    return hands.named(InOrder.of(acts));
  }

  private void title() {
    Event event = plan.event();
    String courses = event.courses()
        .stream()
        .filter(new TableActs(event)::hasADish)
        .map(course -> course.name() + " at " + clock.time(course.at()))
        .collect(Collectors.joining(", "));
    page.heading(event.name());
    page.line(event.guests() + " guests. " + clock.date(0) + ": " + courses + "." + nothingFor());
  }

  private String nothingFor() {
    List<String> bare = plan.event()
        .courses()
        .stream()
        .filter(course -> !new TableActs(plan.event()).hasADish(course))
        .map(course -> course.name() + " at " + clock.time(course.at()))
        .toList();
    return bare.isEmpty() ? "" : " Nothing is made here for " + Words.and(bare) + ".";
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
