package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.supper.Decoded;

/** Where a dish waits when it is done too soon. */
class WaitingTest {

  private static final String FRIDGE_AND_CABINET = """
      burners: [small],
      cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: %d x 40 x 20 cm}, {name: bottom, size: 61 x 40 x 20 cm}]}],
      hot: [{name: cabinet, holds: 70 C, shelves: {name: only, size: 60 x 40 x 20 cm}}],
      vessels: {dish: {count: 6, size: 30 x 30 x 5 cm}, pot: {count: 2, size: 20 x 20 x 15 cm}}""";

  @TempDir
  private Path folder;

  /** The first quarter of an hour is free, and thirty minutes are what it keeps. */
  @ParameterizedTest(name = "{0} minutes: {1}")
  @CsvSource({"45, counter 18:15-19:00", "46, fridge top 18:14-19:00"})
  void a_salad_that_keeps_half_an_hour_goes_to_the_fridge_after_three_quarters(int minutes, String place)
      throws IOException {
    Decoded supper = supper(
        """
              - {dish: Salad, steps: [{do: cut, takes: 10 min, hands: throughout, in: dish, keeps: {counter: 30 min, fridge: 1 day}}]}
            """)
        .earlier("Salad/cut", minutes);

    assertThat(supper.brokenRules()).isEmpty();
    assertThat(supper.told().waits("Salad/cut")).containsExactly(place);
  }

  @ParameterizedTest(name = "{0} minutes: {1}")
  @CsvSource({"15, ", "16, keeps"})
  void what_keeps_nowhere_waits_a_quarter_of_an_hour_and_no_minute_longer(int minutes, String broken)
      throws IOException {
    Decoded supper = supper("""
          - {dish: Salad, steps: [{do: cut, takes: 10 min, hands: throughout, in: dish}]}
        """).earlier("Salad/cut", minutes);

    assertThat(String.join("", supper.brokenRules())).isEqualTo(broken == null ? "" : broken);
  }

  /** Two dishes of 30 cm and a finger's breadth between them take 61 cm. */
  @ParameterizedTest(name = "a top shelf of {0} cm: {1}")
  @CsvSource({"61, fridge top 17:00-19:00", "60, fridge bottom 17:00-19:00"})
  void a_full_shelf_sends_the_next_dish_to_the_shelf_below(int width, String place) throws IOException {
    Decoded supper = AtSeven.supper(folder, FRIDGE_AND_CABINET.formatted(width), """
          - {dish: Salad, steps: [{do: cut, takes: 1 min, in: dish, keeps: {fridge: 1 day}}]}
          - {dish: Fruit, steps: [{do: cut, takes: 1 min, in: dish, keeps: {fridge: 1 day}}]}
        """).earlier("Salad/cut", 120).earlier("Fruit/cut", 120);

    assertThat(supper.brokenRules()).isEmpty();
    assertThat(supper.told().waits("Salad/cut")).containsExactly("fridge top 17:00-19:00");
    assertThat(supper.told().waits("Fruit/cut")).containsExactly(place);
  }

  @ParameterizedTest(name = "{0} dishes: {1}")
  @CsvSource({"4, ", "5, keeps"})
  void a_full_fridge_takes_no_fifth_dish(int dishes, String broken) throws IOException {
    Decoded supper = supper("""
          - {dish: Salad, steps: [{do: cut, takes: 1 min, in: {dish: %d}, keeps: {fridge: 1 day}}]}
        """.formatted(dishes)).earlier("Salad/cut", 120);

    assertThat(String.join("", supper.brokenRules())).isEqualTo(broken == null ? "" : broken);
  }

  /** The counter takes nine minutes beyond the quarter of an hour, for the fridge used up a part of the tenth. */
  @ParameterizedTest(name = "wanted by the jelly for {0} minutes: {1}")
  @CsvSource({"24, ", "25, keeps"})
  void a_salad_makes_room_in_the_fridge_if_it_keeps_on_the_counter_from_then_on(int jelly, String broken)
      throws IOException {
    Decoded supper = AtSeven
        .supper(folder, """
            cold: [{name: fridge, holds: 4 C, shelves: {name: only, size: 40 x 40 x 20 cm}}],
            vessels: {dish: {count: 6, size: 30 x 30 x 5 cm}}""",
            """
                  - {dish: Jelly, arrives: cool, steps: [{do: set, takes: %d min, cold: fridge, in: dish}]}
                  - {dish: Salad, steps: [{do: cut, takes: 10 min, in: dish, keeps: {counter: 10 min, fridge: 1 day}}]}
                """
                .formatted(jelly))
        .earlier("Salad/cut", 120);

    if (broken == null) {
      assertThat(supper.told().waits("Salad/cut"))
          .containsExactly("fridge only 17:00-18:36", "counter 18:36-19:00");
    }
    assertThat(String.join("", supper.brokenRules())).isEqualTo(broken == null ? "" : broken);
  }

  @ParameterizedTest(name = "{0} minutes: {1}")
  @CsvSource({"10, counter 18:50-19:00, ", "11, cabinet only 18:49-19:00, ", "30, cabinet only 18:30-19:00, ",
      "31, counter 18:29-19:00, keeps"})
  void a_hot_dish_that_waits_for_more_than_ten_minutes_goes_to_the_hot_cabinet_for_as_long_as_it_keeps(
      int minutes, String place, String broken) throws IOException {
    Decoded supper = supper(
        """
              - {dish: Stew, steps: [{do: simmer, takes: 20 min, burner: small, in: pot, keeps: {cabinet: 30 min}}]}
            """)
        .earlier("Stew/simmer", minutes);

    assertThat(supper.told().waits("Stew/simmer")).containsExactly(place);
    assertThat(String.join("", supper.brokenRules())).isEqualTo(broken == null ? "" : broken);
  }

  /** 15 of 30 minutes on the counter beyond the free ones are half; 195 of 390 in the fridge are the other half. */
  @ParameterizedTest(name = "a pudding that keeps {0} minutes in the fridge: {1}")
  @CsvSource({"390, ", "389, keeps"})
  void what_nobody_is_there_to_put_away_uses_up_some_of_its_keeping_on_the_counter(int fridge, String broken)
      throws IOException {
    Decoded supper = AtSeven.supper(folder, FRIDGE_AND_CABINET.formatted(61),
        "{name: Ann, hours: {on the day: [10:00-15:00, 15:45-20:00]}}", """
              - dish: Pudding
                arrives: cold
                steps: [{do: cool, takes: 60 min, in: dish, keeps: {counter: 30 min, fridge: %d min}}]
            """.formatted(fridge)).earlier("Pudding/cool", 225);

    if (broken == null) {
      assertThat(supper.told().waits("Pudding/cool"))
          .containsExactly("counter 15:15-15:45", "fridge top 15:45-19:00");
    }
    assertThat(String.join("", supper.brokenRules())).isEqualTo(broken == null ? "" : broken);
  }

  /** From 18:00 to 18:30 nobody is there. */
  @ParameterizedTest(name = "done {0} minutes before the table: {1}")
  @CsvSource({"30, 17:30-18:30", "31, 17:00-18:00"})
  void nobody_takes_a_pudding_out_of_the_fridge_before_there_is_somebody(int before, String when)
      throws IOException {
    Decoded supper = AtSeven.supper(folder, FRIDGE_AND_CABINET.formatted(61),
        "{name: Ann, hours: {on the day: [10:00-18:00, 18:30-20:00]}}", """
              - dish: Pudding
                arrives: cool
                steps: [{do: set, takes: 60 min, cold: fridge, in: dish, keeps: {counter: 1 h}}]
            """).earlier("Pudding/set", before);

    assertThat(supper.brokenRules()).isEmpty();
    assertThat(supper.told().when("Pudding/set")).containsExactly(when);
  }

  /** A minute sooner, and the file is refused. */
  @Test
  void somebody_who_leaves_at_the_table_time_brings_it_to_the_table() throws IOException {
    Decoded supper = AtSeven.supper(folder, FRIDGE_AND_CABINET.formatted(61),
        "{name: Ann, hours: {on the day: 10:00-19:00}}", """
              - {dish: Salad, steps: [{do: cut, takes: 10 min, hands: throughout, in: dish}]}
            """);

    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_pot_waits_on_its_burner_and_holds_it_against_the_next() throws IOException {
    Decoded supper = supper("""
          - {dish: Sauce, steps: [{do: stir, takes: 10 min, burner: small, in: pot, keeps: {burner: 1 h}}]}
          - {dish: Soup, steps: [{do: heat, takes: 10 min, burner: small, in: pot, keeps: {counter: 2 h}}]}
        """).earlier("Sauce/stir", 30);

    assertThat(supper.told().waits("Sauce/stir")).containsExactly("small burner 1 18:30-19:00");
    assertThat(supper.told().when("Soup/heat")).containsExactly("18:10-18:20");
    assertThat(supper.blocker("Soup/heat")).isEqualTo("Sauce/stir");
    assertThat(supper.brokenRules()).isEmpty();
  }

  private Decoded supper(String dishes) throws IOException {
    return AtSeven.supper(folder, FRIDGE_AND_CABINET.formatted(61), dishes);
  }

  @ParameterizedTest(name = "done {0} minutes early: {1}")
  @CsvSource({"15, counter 18:45-19:00", "20, oven 18:40-19:00"})
  void what_keeps_nowhere_but_in_its_oven_stays_in_it_for_more_than_the_free_minutes(int minutes,
      String place)
      throws IOException {
    Decoded supper = AtSeven.supper(folder, """
        ovens: [{name: oven, dial: 60 C to 250 C, step: 10 C, modes: [still], heats: 200 C in 10 min,
                 cools: 200 C to 150 C in 20 min, racks: {count: 1, size: 45 x 36 cm, clear: 15 cm}}],
        vessels: {dish: {count: 1, size: 30 x 30 x 5 cm}}""", """
          - dish: Gratin
            thick: 4 cm
            tags: [not tcs]
            steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: dish, keeps: {oven: 30 min}}]
        """).earlier("Gratin/bake", minutes);

    assertThat(supper.told().waits("Gratin/bake")).containsExactly(place);
  }
}
