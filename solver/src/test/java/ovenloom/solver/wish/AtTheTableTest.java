package ovenloom.solver.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.supper.Decoded;

/** A hot dish loses a point a portion for each minute beyond ten that nothing keeps it hot. */
class AtTheTableTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0} minutes on the counter cost four portions {1}")
  @CsvSource({"0, 0", "10, 0", "11, 4", "30, 80"})
  void the_tenth_minute_out_of_the_oven_is_free_and_the_eleventh_is_not(int minutes, long points)
      throws IOException {
    Decoded supper = WishedFor
        .supper(folder,
            """
                  - {dish: Gratin, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, keeps: {counter: 1 h}}]}
                """)
        .earlier("Gratin/bake", minutes);

    assertThat(supper.score().atTheTableInAll()).isEqualTo(points);
  }

  @Test
  void a_dish_that_arrives_warm_may_cool() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Gratin
            arrives: warm
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, keeps: {counter: 1 h}}]
        """).earlier("Gratin/bake", 30);

    assertThat(supper.score().atTheTableInAll()).isZero();
  }

  /** 25 minutes from the oven to the table, less the 20 written for the rest, are 5. */
  @Test
  void a_rest_its_recipe_asks_for_costs_nothing() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Roast
            steps:
              - {do: roast, takes: 60 min, bake: {at: 180 C}, in: tray}
              - {do: rest, takes: 20 min, keeps: {counter: 1 h}}
        """).earlier("Roast/rest", 5);

    assertThat(supper.score().atTheTableInAll()).isZero();
  }

  /** 31 minutes, less 20 for the rest and 10 for nothing, are 1; four portions. */
  @Test
  void what_a_rest_runs_over_its_recipe_counts() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Roast
            steps:
              - {do: roast, takes: 60 min, bake: {at: 180 C}, in: tray}
              - {do: rest, takes: 20 min, up to: 40 min}
        """).earlier("Roast/roast", 11);

    assertThat(supper.told().when("Roast/rest")).containsExactly("18:29-19:00");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(4);
  }

  @ParameterizedTest(name = "kept on the {0}")
  @CsvSource({"cabinet, 0", "burner, 0", "counter, 80"})
  void a_hot_cabinet_and_a_burner_turned_low_keep_a_pot_hot_and_the_counter_does_not(String place,
      long points)
      throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Stew, steps: [{do: simmer, takes: 60 min, burner: small, in: pot, keeps: {%s: 1 h}}]}
        """.formatted(place)).earlier("Stew/simmer", 30);

    assertThat(supper.told().waits("Stew/simmer")).singleElement().asString().endsWith(" 18:30-19:00");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(points);
  }

  /** The pot comes off at 19:00; the second two plates begin at 19:15, 5 beyond the free ten. */
  @Test
  void the_second_plates_of_one_pot_have_cooled_for_longer_than_the_first() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Stew
            portions: 2
            steps:
              - {do: simmer, once: yes, takes: 60 min, burner: small, in: pot, keeps: {counter: 1 h}}
              - {do: plate, takes: 15 min, hands: throughout, serve: yes}
        """);

    assertThat(supper.told().when("Stew/plate")).containsExactly("19:00-19:15", "19:15-19:30");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(5 * 2);
  }

  /** From the sauce 30 minutes, less 5 to plate and 10 for nothing; from the roast 20 less for its rest. */
  @Test
  void of_two_that_come_off_the_heat_together_the_later_in_the_recipe_counts() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Roast
            steps:
              - {do: roast, takes: 60 min, bake: {at: 180 C}, in: tray}
              - {do: sauce, after: nothing, takes: 20 min, burner: small, in: pot, keeps: {counter: 1 h}}
              - {do: rest, after: roast, takes: 20 min, keeps: {counter: 1 h}}
              - {do: carve, after: [rest, sauce], takes: 5 min, hands: throughout, in: tray}
        """).earlier("Roast/sauce", 25).earlier("Roast/roast", 5);

    assertThat(supper.told().when("Roast/sauce")).containsExactly("18:10-18:30");
    assertThat(supper.told().when("Roast/roast")).containsExactly("17:30-18:30");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(15 * 4);
  }
}
