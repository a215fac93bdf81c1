package ovenloom.solver.bench;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/**
 * Writes what was measured as lines of one table, a sheet a line: in how many rows something was found, and something no worse
 * than the reference; means are over the rows that have the numbers.
 */
final class Table {

  static final String HEAD = """
      | set | rows | found | as good | ours | reference | bound | ours / reference | ours / bound | seconds |
      |---|---|---|---|---|---|---|---|---|---|""";

  private Table() {}

  static String line(Sheet sheet, List<Measured> rows) {
    if (rows.isEmpty()) {
      return "| %s | 0 | not run | | | | | | | |".formatted(sheet.name());
    }
    long found = rows.stream().filter(Measured::isAnswered).count();
    return "| %s | %d | %d | %d | %s | %s | %s | %s | %s | %s |".formatted(
        sheet.name(),
        rows.size(),
        found,
        rows.stream().filter(row -> row.ours() <= row.reference()).count(),
        mean("%.2f", rows, Measured::ours),
        mean("%.2f", rows, Measured::reference),
        mean("%.2f", rows, Measured::bound),
        mean("%.4f", rows, row -> row.ours() / row.reference()),
        mean("%.4f", rows, row -> row.ours() / row.bound()),
        mean("%.1f", rows, Measured::seconds));
  }

  private static String mean(String as, List<Measured> rows, ToDoubleFunction<Measured> number) {
    DoubleStream numbers = rows.stream().mapToDouble(number).filter(Double::isFinite);
    return numbers.average()
        .stream()
        .mapToObj(mean -> String.format(Locale.ROOT, as, mean))
        .findFirst()
        .orElse("-");
  }
}
