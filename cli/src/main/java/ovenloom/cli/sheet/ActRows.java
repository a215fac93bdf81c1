package ovenloom.cli.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Line.Cell;
import ovenloom.model.menu.Event;

/** Acts as rows of a page: by day and minute, who does what, to what. */
final class ActRows {

  private static final int TIME = 5;
  private static final int PAUSE = 30;

  /** Below so many characters a page is narrow. */
  private static final int USUAL = 80;

  private final List<Act> acts;
  private final Page page;
  private final Clock clock;
  private final boolean hasCooks;
  private final int cooks;
  private final int things;

  ActRows(Event event, List<Act> acts, Page page) {
    this.acts = acts;
    this.page = page;
    this.clock = new Clock(event.calendar());
    this.hasCooks = event.cooks().size() > 1;
    this.cooks = Math.min(page.width() < USUAL ? longest(ActRows::names) : longest(ActRows::who),
        page.width() / 7);
    this.things = Math.min(longest(act -> List.of(act.thing())), page.width() / 4);
  }

  private int longest(Function<Act, List<String>> column) {
    return acts.stream().map(column).flatMap(List::stream).mapToInt(Wrapped::length).max().orElse(0);
  }

  private static List<String> who(Act act) {
    return List.of(act.who());
  }

  /** One below the other, where there is no room for them side by side. */
  private static List<String> names(Act act) {
    return List.of(act.who().split(" ", -1));
  }

  void write() {
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
      page.row(cells(act, act.at() == before ? "" : clock.column(act.at())));
      before = act.at();
    }
  }

  private List<Cell> cells(Act act, String time) {
    boolean isSitting = act.turn() == Act.Turn.TABLE;
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell(time, TIME, false, Ink.TIME));
    if (hasCooks) {
      cells.add(new Cell(act.who(), cooks, false));
    }
    cells.add(new Cell(act.thing(), things, true, isSitting ? Ink.TABLE : Ink.PLAIN));
    cells.add(isSitting ? new Cell(act.words(), 0, true, Ink.TABLE) : new Cell(act.words(), 0, false, null));
    return cells;
  }
}
