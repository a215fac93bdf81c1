package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.supper.Decoded;

/** Batches together, in order, and at the pass; and dough that may prove for longer. */
class BatchesTest {

  private static final String KITCHEN = """
      landing: 12,
      ovens: [{name: oven, racks: {count: %d, size: 45 x 38 cm, clear: 15 cm}}],
      vessels: {tray: {count: 6, size: 40 x 30 x 3 cm}, tub: 2}""";

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0} racks, {1}")
  @CsvSource({
      "2, together: 2, 18:30-19:00", // both on a rack of their own
      "2, together: 1, 18:30-19:00 18:30-19:00", // side by side all the same
      "1, together: 1, 18:00-18:30 18:30-19:00"})
  void two_trays_of_buns(int racks, String together, String when) throws IOException {
    Decoded supper = buns(racks, 2, together);

    assertThat(supper.told().when("Buns/bake")).containsExactly(when.split(" "));
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void of_three_trays_that_go_in_two_at_a_time_the_third_goes_last() throws IOException {
    Decoded supper = buns(2, 3, "together: 2");

    assertThat(supper.plan().placements())
        .extracting(run -> run.batches().first() + "-" + run.batches().last())
        .containsExactly("1-2", "3-3");
    assertThat(supper.told().when("Buns/bake")).containsExactly("18:00-18:30", "18:30-19:00");
    assertThat(supper.blocker("Buns/bake 1")).isEqualTo("Buns/bake");
    assertThat(supper.brokenRules()).isEmpty();
  }

  /** Whichever is placed first, and though the second could wait for longer. */
  @ParameterizedTest(name = "batch {0} placed first")
  @CsvSource({"1", "2"})
  void the_first_tray_is_out_no_later_than_the_second(int first) throws IOException {
    Decoded supper = buns(2, 2, "together: 1").first("Buns/bake " + first).earlier("Buns/bake 2", 20);

    assertThat(supper.told().when("Buns/bake")).containsExactly("18:10-18:40", "18:10-18:40");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void plates_go_out_from_the_table_time_on_one_lot_after_the_other() throws IOException {
    Decoded supper = terrine(6);

    assertThat(supper.told().when("Terrine/slice")).containsExactly("18:55-19:00");
    assertThat(supper.told().when("Terrine/plate")).containsExactly("19:00-19:06", "19:06-19:12");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void two_lots_of_seven_minutes_do_not_go_out_in_twelve() throws IOException {
    assertThat(terrine(7).brokenRules()).isNotEmpty();
  }

  private Decoded terrine(int minutesToPlateTwo) throws IOException {
    return AtSeven.supper(folder, KITCHEN.formatted(1), """
          - dish: Terrine
            portions: 2
            arrives: cold
            steps:
              - {do: slice, once: yes, takes: 5 min, hands: throughout, in: tray, keeps: {counter: 1 h}}
              - {do: plate, takes: %d min, hands: throughout, serve: yes}
        """.formatted(minutesToPlateTwo));
  }

  /** It may prove for 60 to 80 minutes; what is more, the dough waits, a quarter of an hour at the most. */
  @ParameterizedTest(name = "kneaded {0} minutes too soon: proves {1}")
  @CsvSource({"0, 17:30-18:30, ", "20, 17:10-18:30, ", "21, 17:10-18:30, ", "35, 17:10-18:30, ",
      "36, 17:10-18:30, keeps"})
  void dough_that_is_early_proves_for_longer_as_far_as_it_may(int minutes, String proves, String broken)
      throws IOException {
    Decoded supper = AtSeven.supper(folder, KITCHEN.formatted(1), """
          - dish: Bread
            steps:
              - {do: knead, takes: 10 min, hands: throughout, in: tub}
              - {do: prove, takes: 60 min, up to: 80 min}
              - {do: bake, takes: 30 min, bake: {at: 220 C}, in: tray}
        """).earlier("Bread/knead", minutes);

    assertThat(supper.told().when("Bread/prove")).containsExactly(proves);
    assertThat(String.join("", supper.brokenRules())).isEqualTo(broken == null ? "" : broken);
  }

  /** The link's own hour counts on the counter beyond its free quarter, and is the longest gap besides. */
  @ParameterizedTest(name = "{0} minutes in between: {1}")
  @CsvSource({"30, ", "60, ", "61, links"})
  void a_gap_is_no_longer_than_its_link_allows(int minutes, String broken) throws IOException {
    Decoded supper = AtSeven.supper(folder, KITCHEN.formatted(1), """
          - dish: Salad
            steps:
              - {do: cut, takes: 10 min, hands: throughout, in: tub}
              - {do: dress, takes: 10 min, hands: throughout, after: {cut: {least: 30 min, most: 1 h}}}
        """).earlier("Salad/cut", minutes - 30);

    assertThat(supper.told().when("Salad/dress")).containsExactly("18:50-19:00");
    assertThat(String.join("", supper.brokenRules())).isEqualTo(broken == null ? "" : broken);
  }

  private Decoded buns(int racks, int batches, String together) throws IOException {
    return AtSeven.supper(folder, KITCHEN.formatted(racks), """
          - dish: Buns
            portions: 4
            portions a guest: %d
            arrives: warm
            steps: [{do: bake, takes: 30 min, bake: {at: 220 C}, in: tray, %s, keeps: {counter: 2 h}}]
        """.formatted(batches, together));
  }
}
