package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import ovenloom.model.tally.Group;

/**
 * A column of figures in a table of some runs.
 *
 * @param meaning of its name; empty where that says it
 */
public record Column(String name, String meaning, Function<GroupWords, String> cell) {

  /** All there are, but for those that would be of no use. */
  public static List<Column> all(Group all) {
    List<Column> columns = new ArrayList<>(List.of(
        new Column("runs", "", GroupWords::runs),
        new Column("plan", "with a plan", GroupWords::plans),
        new Column("no", "proven to have none", GroupWords::none),
        new Column("open", "none found, and nothing proven", GroupWords::open)));
    if (all.answers().wrong() > 0) {
      columns.add(new Column("wrong", "mistaken or failed, why is in runs.csv", GroupWords::wrong));
    }
    columns.addAll(List.of(
        new Column("table", "points at the table", GroupWords::table),
        new Column("wishes", "points of all wishes", GroupWords::wishes),
        new Column("hands", "minutes of all cooks in the hour before each course", GroupWords::hands),
        new Column("kWh", "of ovens and burners", GroupWords::kilowattHours)));
    return columns;
  }

  /** What their names mean, in two sentences. */
  public static String legend(List<Column> columns) {
    return columns.stream()
        .filter(column -> !column.meaning().isEmpty())
        .map(column -> column.name() + ": " + column.meaning())
        .collect(Collectors.joining("; ", "",
            ". Points, minutes and kWh are means of those with a plan; fewer is better."));
  }

  public String figure(Group group) {
    return cell.apply(new GroupWords(group));
  }
}
