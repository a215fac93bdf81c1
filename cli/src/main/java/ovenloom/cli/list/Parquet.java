package ovenloom.cli.list;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Driver;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import ovenloom.model.file.WholeFile;

/** The table of runs as a Parquet file. DuckDB makes it, where its driver is on the class path; the program comes without. */
public final class Parquet {

  private static final String DUCKDB = "jdbc:duckdb:";

  private Parquet() {}

  /** Whether one can be made here. */
  public static boolean isPossible() {
    return DriverManager.drivers().anyMatch(Parquet::isDuckDbs);
  }

  private static boolean isDuckDbs(Driver driver) {
    try {
      return driver.acceptsURL(DUCKDB);
    } catch (SQLException no) {
      return false;
    }
  }

  /**
   * Writes it.
   *
   * @param csv the table as {@link RunList} has it, with these columns
   * @throws IOException where it cannot be written
   */
  public static void write(Path csv, List<RunColumn> columns, Path parquet) throws IOException {
    WholeFile.write(file -> copy(csv, columns, file), parquet);
  }

  private static void copy(Path csv, List<RunColumn> columns, Path parquet) throws IOException {
    try (Connection duckDb = DriverManager.getConnection(DUCKDB);
        Statement statement = duckDb.createStatement()) {
      statement.execute("""
          COPY (SELECT %s FROM read_csv(%s, header = true, auto_detect = false, delim = ',', quote = '"',
          escape = '"', columns = {%s})) TO %s (FORMAT parquet)"""
          .formatted(each(columns, Parquet::value), text(csv.toString()), each(columns, Parquet::type),
              text(parquet.toString())));
    } catch (SQLException trouble) {
      throw new IOException("DuckDB: " + trouble.getMessage(), trouble);
    }
  }

  private static String each(List<RunColumn> columns, Function<RunColumn, String> words) {
    return columns.stream().map(words).collect(Collectors.joining(", "));
  }

  /** Without the apostrophe that keeps a spreadsheet from misreading it. */
  private static String value(RunColumn column) {
    String name = name(column);
    return column.isNumber() ? name
        : "CASE WHEN starts_with(%s, '''') THEN substr(%s, 2) ELSE %s END AS %s"
            .formatted(name, name, name, name);
  }

  private static String type(RunColumn column) {
    return text(column.name()) + ": " + (column.isNumber() ? "'BIGINT'" : "'VARCHAR'");
  }

  private static String name(RunColumn column) {
    return '"' + column.name().replace("\"", "\"\"") + '"';
  }

  private static String text(String words) {
    return "'" + words.replace("'", "''") + "'";
  }
}
