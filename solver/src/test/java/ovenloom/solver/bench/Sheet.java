package ovenloom.solver.bench;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Rows that are one line of the table together.
 *
 * @param atOnce how many of them may be measured side by side: as many as there are processors for
 * @param all its rows, made when they are asked for
 */
record Sheet(String name, int atOnce, Supplier<List<Row>> all) {

  private static final int A_TENTH = 10;

  /** All rows, or each tenth. */
  List<Row> rows(boolean quick) {
    List<Row> rows = all.get();
    int step = quick ? A_TENTH : 1;
    return IntStream.range(0, rows.size()).filter(row -> row % step == 0).mapToObj(rows::get).toList();
  }
}
