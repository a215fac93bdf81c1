package ovenloom.solver.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.life.Warmness;
import ovenloom.model.menu.Work;
import ovenloom.solver.supper.Decoded;

/** A hot dish loses a point a portion for each tenth of a kelvin below 60 C; what is made here is 2 mm thin, so that every minute tells. */
class AtTheTableTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0} minutes on the counter")
  @CsvSource({"0, 0", "3, 0", "6, 4", "11, 4", "30, 4"})
  void what_is_left_on_the_counter_costs_each_of_four_portions_what_it_has_cooled(int minutes, int portions)
      throws IOException {
    Decoded supper = WishedFor
        .supper(folder,
            """
                  - {dish: Gratin, thick: 2 mm, covered: yes, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, keeps: {counter: 1 h}}]}
                """)
        .earlier("Gratin/bake", minutes);

    long tenths = tenths(supper, "bake", minutes);
    assertThat(supper.score().atTheTableInAll()).isEqualTo(portions * tenths);
    assertThat(tenths > 0).isEqualTo(portions > 0);
  }

  private static long tenths(Decoded supper, String step, int minutes) {
    Work work = Work.of(supper.event());
    int index = work.steps()
        .stream()
        .filter(each -> each.step().name().equals(step))
        .findFirst()
        .orElseThrow()
        .index();
    return new Warmness(work).tenthsShort(index, minutes);
  }

  @Test
  void a_dish_that_arrives_warm_may_cool_for_longer() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Gratin
            thick: 2 mm
            covered: yes
            arrives: warm
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, keeps: {counter: 1 h}}]
        """).earlier("Gratin/bake", 7);

    assertThat(supper.score().atTheTableInAll()).isZero();
  }

  /** 23 minutes from the oven to the table, less the 20 written for the rest, are 3. */
  @Test
  void a_rest_its_recipe_asks_for_costs_nothing() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Roast
            thick: 2 mm
            covered: yes
            steps:
              - {do: roast, takes: 60 min, bake: {at: 180 C}, in: tray}
              - {do: rest, takes: 20 min, keeps: {counter: 1 h}}
        """).earlier("Roast/rest", 3);

    assertThat(supper.score().atTheTableInAll()).isZero();
  }

  /** 31 minutes, less 20 for the rest, are 11; four portions. */
  @Test
  void what_a_rest_runs_over_its_recipe_counts() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Roast
            thick: 2 mm
            covered: yes
            steps:
              - {do: roast, takes: 60 min, bake: {at: 180 C}, in: tray}
              - {do: rest, takes: 20 min, up to: 40 min}
        """).earlier("Roast/roast", 11);

    assertThat(supper.told().when("Roast/rest")).containsExactly("18:29-19:00");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(4 * tenths(supper, "roast", 11)).isPositive();
  }

  @ParameterizedTest(name = "kept on the {0}")
  @CsvSource({"cabinet, 0", "burner, 0", "counter, 4"})
  void a_hot_cabinet_and_a_burner_turned_low_keep_a_pot_hot_and_the_counter_does_not(String place,
      int portions)
      throws IOException {
    Decoded supper = WishedFor
        .supper(folder,
            """
                  - {dish: Stew, thick: 2 mm, covered: yes, steps: [{do: simmer, takes: 60 min, burner: small, in: pot, keeps: {%s: 1 h}}]}
                """
                .formatted(place))
        .earlier("Stew/simmer", 30);

    assertThat(supper.told().waits("Stew/simmer")).singleElement().asString().endsWith(" 18:30-19:00");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(portions * tenths(supper, "simmer", 30));
  }

  /** The pot comes off at 19:00; the second two plates begin at 19:15. */
  @Test
  void the_second_plates_of_one_pot_have_cooled_for_longer_than_the_first() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Stew
            thick: 2 mm
            covered: yes
            portions: 2
            steps:
              - {do: simmer, once: yes, takes: 60 min, burner: small, in: pot, keeps: {counter: 1 h}}
              - {do: plate, takes: 15 min, hands: throughout, serve: yes}
        """);

    assertThat(supper.told().when("Stew/plate")).containsExactly("19:00-19:15", "19:15-19:30");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(2 * tenths(supper, "simmer", 15)).isPositive();
  }

  /** From the sauce 30 minutes, less 5 to plate; from the roast 20 less for its rest. */
  @Test
  void of_two_that_come_off_the_heat_together_the_later_in_the_recipe_counts() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Roast
            thick: 2 mm
            covered: yes
            steps:
              - {do: roast, takes: 60 min, bake: {at: 180 C}, in: tray}
              - {do: sauce, after: nothing, takes: 20 min, burner: small, in: pot, keeps: {counter: 1 h}}
              - {do: rest, after: roast, takes: 20 min, keeps: {counter: 1 h}}
              - {do: carve, after: [rest, sauce], takes: 5 min, hands: throughout, in: tray}
        """).earlier("Roast/sauce", 25).earlier("Roast/roast", 5);

    assertThat(supper.told().when("Roast/sauce")).containsExactly("18:10-18:30");
    assertThat(supper.told().when("Roast/roast")).containsExactly("17:30-18:30");
    assertThat(supper.score().atTheTableInAll()).isEqualTo(4 * tenths(supper, "sauce", 25)).isPositive();
  }
}
