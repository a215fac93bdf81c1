package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Column;
import ovenloom.cli.sheet.GroupWords;
import ovenloom.model.tally.Tally;
import ovenloom.model.variation.Axis;

/**
 * All that is on the page of many runs.
 *
 * @param asked how many runs there are to be in the end
 */
public record RunsView(Tally tally, String name, long asked, List<FitMap> maps, FrontPicture front,
    List<Bar> bars) {

  public RunsView {
    maps = List.copyOf(maps);
    bars = List.copyOf(bars);
  }

  static RunsView of(Tally tally, String name, long asked) {
    List<FitMap> maps = new ArrayList<>();
    tally.fits().forEach(fit -> maps.add(new FitMap("map-" + (maps.size() + 1), fit)));
    return new RunsView(tally, name, asked, maps, FrontPicture.of(tally),
        Bar.of(tally.deciding().dishes()));
  }

  public GroupWords all() {
    return new GroupWords(tally.all());
  }

  /** How many runs have no result yet, in words; null where all have. */
  public @Nullable String left() {
    long left = asked - tally.all().answers().all();
    return left <= 0 ? null
        : GroupWords.counted(left, "run is", "runs are") + " left: the same command goes on with them.";
  }

  public List<Column> columns() {
    return Column.all(tally.all());
  }

  public String legend() {
    return Column.legend(columns());
  }

  /** What the best run with a choice is called beside it. */
  public String best(Axis axis, String choice) {
    return new GroupWords(tally.with(axis, choice)).best(axis);
  }

  /** Dishes that decide too seldom to be drawn. */
  public int otherDishes() {
    return tally.deciding().dishes().size() - bars.size();
  }

  public String style() {
    return Palette.style() + PlanPage.read("page.css") + PlanPage.read("runs.css");
  }
}
