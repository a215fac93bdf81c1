package ovenloom.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultsTest {

  private static final Row SOUP = new Row("soup", () -> new Measured(Measured.NOTHING, 1, 1, 1));
  private static final Row ROAST = new Row("roast", () -> new Measured(Measured.NOTHING, 1, 1, 1));
  private static final Sheet SUPPERS = new Sheet("suppers, 5 s", 1, () -> List.of(SOUP, ROAST));

  @TempDir
  private Path folder;

  private Results results() throws IOException {
    return Results.in(folder.resolve("bench").resolve("results.txt"));
  }

  @Test
  void a_row_that_was_measured_is_known_at_the_next_start_and_others_are_not() throws IOException {
    var measured = new Measured(12.5, 12, 10, 0.25);
    results().keep(SUPPERS, SOUP, measured);

    assertThat(results().of(SUPPERS, SOUP)).isEqualTo(measured);
    assertThat(results().of(SUPPERS, ROAST)).isNull();
  }

  @Test
  void a_row_without_an_answer_stays_without_one() throws IOException {
    results().keep(SUPPERS, ROAST, new Measured(Measured.NOTHING, 12, Double.NaN, 30));

    assertThat(results().of(SUPPERS, ROAST)).isNotNull().matches(row -> !row.isAnswered());
  }

  @Test
  void a_line_that_was_cut_short_is_measured_again() throws IOException {
    results().keep(SUPPERS, SOUP, new Measured(12.5, 12, 10, 0.25));
    Files.writeString(folder.resolve("bench").resolve("results.txt"), "suppers, 5 s: roast\t12.5 1",
        StandardOpenOption.APPEND);

    assertThat(results().of(SUPPERS, SOUP)).isNotNull();
    assertThat(results().of(SUPPERS, ROAST)).isNull();
  }
}
