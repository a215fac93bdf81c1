package ovenloom.cli.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.cli.sheet.HandResults;
import ovenloom.model.measure.Calendar;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Result;
import ovenloom.model.variation.Result.Answer;

/** DuckDB's driver is on the class path of tests. */
class ParquetTest {

  private static final Calendar JUNE = new Calendar(LocalDate.of(2027, 6, 12), null);

  @TempDir
  private Path folder;

  @Test
  void it_holds_what_the_table_holds() throws IOException, SQLException {
    Path parquet = write(HandResults.AXES, HandResults.all());

    assertThat(ask("SELECT count(*), count(wishes), sum(wishes), sum(\"energy Wh\"), sum(guests) FROM "
        + parquet(parquet))).as("300 + 340 + 461; 8100 + 10400 + 13500; 3 x 80 + 3 x 120")
        .containsExactly("6", "3", "1101", "32000", "600");
    assertThat(ask("SELECT kitchen, answer, why, begins, \"begins minute\" FROM " + parquet(parquet)
        + " WHERE guests = 80 AND kitchen = 'club'"))
        .containsExactly("club", "plan", "null", "day before 16:30", "-450");
  }

  @Test
  void numbers_are_numbers_and_words_are_words() throws IOException, SQLException {
    Path parquet = write(HandResults.AXES, HandResults.all());

    assertThat(ask("SELECT typeof(kitchen), typeof(guests), typeof(answer), typeof(\"hottest minute\"), "
        + "typeof(hottest) FROM " + parquet(parquet) + " LIMIT 1"))
        .containsExactly("VARCHAR", "BIGINT", "VARCHAR", "BIGINT", "VARCHAR");
  }

  @Test
  void names_come_out_as_they_went_in() throws IOException, SQLException {
    Axis axis = new Axis("it's \"so\"", List.of("=1+1", "'tis", "1/2", "a\nb"));
    List<Result> results = axis.choices()
        .stream()
        .map(choice -> HandResults.without(Map.of(axis.name(), choice), Answer.NO_PLAN, "why"))
        .toList();

    Path parquet = write(List.of(axis), results);

    assertThat(ask("SELECT string_agg(\"it's \"\"so\"\"\", '|') FROM " + parquet(parquet)))
        .containsExactly("=1+1|'tis|1/2|a\nb");
  }

  @Test
  void what_cannot_be_written_leaves_nothing_behind() {
    Path missing = folder.resolve("missing.csv");

    assertThatThrownBy(
        () -> Parquet.write(missing, RunColumns.of(HandResults.AXES, JUNE), folder.resolve("runs.parquet")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("missing.csv");
    assertThat(folder).isEmptyDirectory();
  }

  private Path write(List<Axis> axes, List<Result> results) throws IOException {
    Path csv = Files.createDirectories(folder.resolve("what's here")).resolve("runs.csv");
    Path parquet = csv.resolveSibling("runs.parquet");
    List<RunColumn> columns = RunColumns.of(axes, JUNE);
    try (RunList list = RunList.in(csv, columns)) {
      for (Result result : results) {
        list.add(result);
      }
    }
    Parquet.write(csv, columns, parquet);
    return parquet;
  }

  private static String parquet(Path file) {
    return "read_parquet('" + file.toString().replace("'", "''") + "')";
  }

  /** The only row. */
  private static List<String> ask(String sql) throws SQLException {
    try (var duckDb = DriverManager.getConnection("jdbc:duckdb:");
        var statement = duckDb.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      assertThat(row.next()).isTrue();
      List<String> cells = new ArrayList<>();
      for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
        cells.add(String.valueOf(row.getObject(i)));
      }
      assertThat(row.next()).isFalse();
      return cells;
    }
  }
}
