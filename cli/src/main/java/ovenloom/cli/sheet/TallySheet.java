package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.tally.Answers;
import ovenloom.model.tally.Group;
import ovenloom.model.tally.Tally;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result.Answer;

/** What many runs came to: a table for each axis, a line for each of its choices. */
public final class TallySheet {

  /** More choices along an axis nobody reads on a screen. */
  static final int MOST = 12;

  private static final int WIDE = 110;
  private static final int SHORTEST_NAME = 13;
  private static final int LONGEST_NAME = 34;

  /** What is left out where there is no room, one after the other; the first is but the sum of some others. */
  private static final List<String> FIRST_TO_GO = List.of("runs", "kWh", "table", "wishes");
  private static final int INDENT = 2;

  private final Tally tally;
  private final Page page;
  private final List<Column> columns;
  private final List<Integer> widths;
  private final int names;

  private TallySheet(Tally tally, int width, boolean colour) {
    this.tally = tally;
    page = new Page(Math.max(Page.NARROWEST, width), colour);
    columns = withRoom();
    widths = columns.stream().map(this::width).toList();
    names = names();
  }

  /**
   * The sheet.
   *
   * @param name of the what-if
   * @param asked how many runs there are to be in the end
   */
  public static String of(Tally tally, String name, long asked, int width, boolean colour) {
    TallySheet sheet = new TallySheet(tally, width, colour);
    sheet.write(name, asked);
    return sheet.page.toString();
  }

  private void write(String name, long asked) {
    page.heading(name).line(new GroupWords(tally.all()).sentence());
    long left = asked - tally.all().answers().all();
    if (left > 0) {
      page.line(GroupWords.counted(left, "run is", "runs are")
          + " left. The same command goes on from here.");
    }
    if (tally.all().answers().all() > 0) {
      tally.axes().forEach(this::table);
      page.blank().line(Column.legend(columns));
      best();
    }
  }

  private void table(Axis axis) {
    page.blank().row(cells(axis.name(), columns.stream().map(Column::name).toList(), "best", true));
    List<String> tried = tried(axis);
    fitting(axis, tried).forEach(choice -> line(axis, choice));
    if (tried.size() > MOST) {
      page.line(tried.size() - MOST + " more are in runs.html.");
    }
  }

  private List<String> tried(Axis axis) {
    return axis.choices().stream().filter(choice -> answers(axis, choice).all() > 0).toList();
  }

  /** All, as they are written; of too many those that fit most often. */
  private List<String> fitting(Axis axis, List<String> tried) {
    return tried.size() <= MOST ? tried
        : tried.stream()
            .sorted(Comparator.comparingLong(choice -> -answers(axis, choice).of(Answer.PLAN)))
            .limit(MOST)
            .toList();
  }

  private Answers answers(Axis axis, String choice) {
    return tally.with(axis, choice).answers();
  }

  private void line(Axis axis, String choice) {
    Group group = tally.with(axis, choice);
    String best = new GroupWords(group).best(axis);
    page.row(cells(choice, columns.stream().map(column -> column.figure(group)).toList(), best, false));
    if (!isWide() && !best.isEmpty()) {
      page.row(List.of(new Cell("", INDENT - Cell.GAP, false), new Cell("best: " + best, 0, false)));
    }
  }

  private List<Cell> cells(String name, List<String> figures, String best, boolean isHead) {
    List<Cell> cells = new ArrayList<>(List.of(new Cell(name, names, isHead)));
    for (int i = 0; i < figures.size(); i++) {
      cells.add(Cell.number(figures.get(i), widths.get(i), isHead));
    }
    if (isWide()) {
      cells.add(new Cell(best, 0, isHead));
    }
    return cells;
  }

  private void best() {
    String best = new GroupWords(tally.all()).bestInFull();
    if (best != null) {
      page.blank().line("Best of all: " + best);
    }
  }

  private boolean isWide() {
    return page.width() >= WIDE;
  }

  private List<Column> withRoom() {
    List<Column> some = new ArrayList<>(Column.all(tally.all()));
    for (String name : FIRST_TO_GO) {
      if (figures(some) + SHORTEST_NAME > page.width()) {
        some.removeIf(column -> column.name().equals(name));
      }
    }
    return some;
  }

  private int figures(List<Column> some) {
    return some.stream().mapToInt(column -> width(column) + Cell.GAP).sum();
  }

  private int width(Column column) {
    return groups().map(column::figure).mapToInt(String::length).reduce(column.name().length(), Math::max);
  }

  private Stream<Group> groups() {
    return tally.axes()
        .stream()
        .flatMap(axis -> axis.choices().stream().map(choice -> tally.with(axis, choice)));
  }

  /** What the figures leave, if so much is needed. */
  private int names() {
    int longest = tally.axes()
        .stream()
        .flatMap(axis -> Stream.concat(Stream.of(axis.name()), axis.choices().stream()))
        .mapToInt(Wrapped::length)
        .max()
        .orElse(0);
    return Math.min(Math.min(longest, LONGEST_NAME), page.width() - figures(columns));
  }
}
