package ovenloom.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TableTest {

  private static final Sheet SUPPERS = new Sheet("suppers", 1, List::of);

  @Test
  void ratios_are_means_over_the_rows_that_were_answered() {
    var rows = List.of(
        new Measured(110, 100, 100, 1),
        new Measured(100, 100, 80, 2),
        new Measured(Measured.NOTHING, 100, 100, 3));

    assertThat(Table.line(SUPPERS, rows))
        .isEqualTo("| suppers | 3 | 2 | 1 | 105.00 | 100.00 | 93.33 | 1.0500 | 1.1750 | 2.0 |");
  }

  @Test
  void what_was_not_run_says_so() {
    assertThat(Table.line(SUPPERS, List.of())).startsWith("| suppers | 0 | not run |");
  }

  @Test
  void quick_measures_each_tenth_row_beginning_with_the_first() {
    var rows = IntStream.range(0, 21).mapToObj(row -> new Row("row " + row, () -> null)).toList();
    var sheet = new Sheet("suppers", 1, () -> rows);

    assertThat(sheet.rows(true)).extracting(Row::name).containsExactly("row 0", "row 10", "row 20");
    assertThat(sheet.rows(false)).hasSize(21);
  }
}
