package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;

/** How warm one batch of a dish is along its life: a line for each place it is in. */
public final class LifeSheet {

  private static final int WARM = 12;
  private static final String CAUTION = """
      Predicted, in C, at the beginning and the end of each line. A prediction is no thermometer: probe the thickest part. \
      Local food codes and licensed practice come first.""";

  private LifeSheet() {}

  /**
   * Writes it out.
   *
   * @param track the way its food goes
   * @param batch from 1
   * @param width of a line, in characters
   */
  public static String of(Plan plan, Track track, Dish dish, int batch, int width, boolean colour) {
    Page page = new Page(width, colour);
    String which = dish.batches() == 1 ? "" : ", " + Words.batches(List.of(batch)) + " of " + dish.batches();
    page.heading(dish.name() + which).blank();
    Clock clock = new Clock(plan.event().calendar());
    List<Leg> legs = track.legs().stream().filter(leg -> leg.when().minutes() > 0).toList();
    int column = legs.stream().mapToInt(leg -> times(clock, leg).length()).max().orElse(0);
    page.row(cells(new Cell("", column, false), "middle", "surface", ""));
    int day = Integer.MIN_VALUE;
    for (Leg leg : legs) {
      int begins = Math.floorDiv(leg.when().from(), 24 * 60);
      if (begins != day) {
        page.line(clock.dayAndMonth(leg.when().from()));
        day = begins;
      }
      page.row(line(new Cell(times(clock, leg), column, false), leg));
    }
    return page.blank().line(CAUTION).toString();
  }

  /** An end on another day has its day with it. */
  private static String times(Clock clock, Leg leg) {
    int from = leg.when().from();
    return clock.column(from) + " - " + clock.time(leg.when().to(), from);
  }

  private static List<Cell> line(Cell times, Leg leg) {
    int from = leg.when().from();
    int to = leg.when().to();
    String what = leg.waits() ? Words.capital(leg.where()) + "."
        : Words.capital(leg.step().step().name()) + batches(leg.step().batches()) + ": " + leg.where() + ".";
    return cells(times,
        pair(leg.at(from).middle(), leg.at(to).middle()), pair(leg.at(from).surface(), leg.at(to).surface()),
        what);
  }

  private static String batches(Batches batches) {
    return batches.count() == 1 ? "" : " (all)";
  }

  private static String pair(double from, double to) {
    return Math.round(from) + " to " + Math.round(to);
  }

  private static List<Cell> cells(Cell times, String middle, String surface, String what) {
    List<Cell> cells = new ArrayList<>();
    cells.add(times);
    cells.add(new Cell(middle, WARM, false));
    cells.add(new Cell(surface, WARM, false));
    cells.add(new Cell(what, 0, false));
    return cells;
  }
}
