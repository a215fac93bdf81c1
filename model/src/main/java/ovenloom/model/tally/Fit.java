package ovenloom.model.tally;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;

/** Which choices along two axes go together: for each pair of them, how its runs ended. */
public final class Fit {

  private final Axis rows;
  private final Axis columns;
  private final Map<String, Map<String, Answers>> cells = new LinkedHashMap<>();

  Fit(Axis rows, Axis columns) {
    this.rows = rows;
    this.columns = columns;
    for (String row : rows.choices()) {
      Map<String, Answers> line = new LinkedHashMap<>();
      columns.choices().forEach(column -> line.put(column, new Answers()));
      cells.put(row, line);
    }
  }

  public Axis rows() {
    return rows;
  }

  public Axis columns() {
    return columns;
  }

  void add(Result result) {
    at(result.choice(rows), result.choice(columns)).add(result.answer());
  }

  /** Those with two choices. */
  public Answers at(String row, String column) {
    return Objects.requireNonNull(Objects.requireNonNull(cells.get(row), row).get(column), column);
  }
}
