package ovenloom.cli.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;

/** A plan as strips of time: a line for each place and each cook, a strip for each day and for the last hours before each course. */
public final class StripSheet {

  /** So long before all sit down, minutes, and so long after it. */
  private static final int BEFORE = 120;
  private static final int AFTER = 15;

  private final Plan plan;
  private final Glyphs glyphs;
  private final Page page;
  private final Clock clock;
  private final Letters letters;
  private final List<StripLine> lines;
  private final List<Stretch> work;
  private final int labels;

  private StripSheet(Plan plan, Glyphs glyphs, Page page) {
    this.plan = plan;
    this.glyphs = glyphs;
    this.page = page;
    this.clock = new Clock(plan.event().calendar());
    this.letters = Letters.of(plan.event().dishes().stream().map(Dish::name).toList());
    StripLines all = new StripLines(plan, letters, glyphs);
    this.lines = all.all();
    this.work = all.work();
    this.labels = Math.min(page.width() / 3,
        lines.stream().mapToInt(line -> Wrapped.length(line.label())).max().orElse(0));
  }

  /**
   * Writes it out.
   *
   * @param plan one that has passed the audit
   * @param width of a line, in characters; below 40 it is 40
   * @param colour whether a terminal is there to show bold letters
   */
  public static String of(Plan plan, Glyphs glyphs, int width, boolean colour) {
    StripSheet sheet = new StripSheet(plan, glyphs, Page.of(plan.event(), width, colour));
    sheet.days();
    sheet.key();
    return sheet.page.toString();
  }

  private void days() {
    int first = work.stream().mapToInt(Stretch::from).min().orElse(0);
    int last = work.stream().mapToInt(Stretch::to).max().orElse(0);
    for (LocalDate day = clock.day(first); !day.isAfter(clock.day(last)); day = day.plusDays(1)) {
      Stretch busy = busy(day);
      if (busy.minutes() > 0) {
        page.blank().underlined(clock.heading(day));
        Strip whole = strip(busy);
        page.line("Each letter is " + whole.step() + " min.");
        draw(whole);
        sittings(day).forEach(sitting -> closely(sitting, whole));
      }
    }
  }

  /** From the first to the last work of a day. */
  private Stretch busy(LocalDate day) {
    Calendar calendar = plan.event().calendar();
    Stretch whole = new Stretch(
        calendar.minuteOf(day.atStartOfDay()), calendar.minuteOf(day.plusDays(1).atStartOfDay()));
    List<Stretch> today = new Stretches(work).shared(Stretches.of(whole)).parts();
    return today.isEmpty() ? new Stretch(0, 0)
        : new Stretch(today.getFirst().from(), today.getLast().to());
  }

  private Strip strip(Stretch when) {
    return Strip.of(when, page.width() - labels - Cell.GAP);
  }

  private void draw(Strip strip) {
    row("", strip.ruler(clock, glyphs.rule()), Ink.TIME);
    lines.stream()
        .filter(line -> !line.during(strip.when()).isEmpty())
        .forEach(line -> row(line.label(), strip.drawn(line, glyphs.free()), Ink.PLAIN));
  }

  private void row(String label, String letters, Ink ink) {
    page.row(List.of(new Cell(label, labels, true), new Cell(letters, 0, false, ink)));
  }

  private List<Course> sittings(LocalDate day) {
    return plan.event()
        .courses()
        .stream()
        .filter(new TableActs(plan.event())::hasADish)
        .filter(course -> clock.day(course.at()).equals(day))
        .toList();
  }

  /** The time before a course, from the one before it on, if that can be shown more closely than the day. */
  private void closely(Course course, Strip whole) {
    int before = plan.event()
        .courses()
        .stream()
        .mapToInt(Course::at)
        .filter(at -> at < course.at())
        .max()
        .orElse(Integer.MIN_VALUE);
    Strip close = strip(new Stretch(Math.max(before, course.at() - BEFORE), course.at() + AFTER));
    if (close.step() < whole.step()) {
      page.blank()
          .line("Before " + course.name() + " at " + clock.time(course.at()) + ": each letter is "
              + close.step() + " min.");
      draw(close);
    }
  }

  private void key() {
    List<String> key = new ArrayList<>();
    plan.event().dishes().forEach(dish -> key.add(letters.of(dish.name()) + " " + dish.name()));
    key.add(glyphs.on() + " oven on, nothing in it");
    key.add(glyphs.wash() + " washing up");
    key.add(glyphs.rest() + " break");
    key.add(glyphs.sitting() + " all sit down");
    page.blank().underlined("What the letters are");
    int width = Math.min(page.width(), key.stream().mapToInt(Wrapped::length).max().orElse(0));
    int columns = Math.max(1, (page.width() + Cell.GAP) / (width + Cell.GAP));
    for (int from = 0; from < key.size(); from += columns) {
      page.row(key.subList(from, Math.min(key.size(), from + columns))
          .stream()
          .map(words -> new Cell(words, width, false))
          .toList());
    }
    page.line("Where several things are at once, their letters take turns.");
  }
}
