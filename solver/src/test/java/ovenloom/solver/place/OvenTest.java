package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.supper.Decoded;

/** Racks, and an oven's warming, holding and cooling. It warms from 21 C to 180 C in 15 minutes. */
class OvenTest {

  private static final String ONE_OVEN = """
      ovens: [{name: oven, dial: 60 C to 250 C, heating: %s, racks: {count: 3, size: 45 x 38 cm, clear: 15 cm}}],
      landing: 20,
      vessels: {tray: {count: 6, size: 40 x 30 x 3 cm}}""";

  private static final String TART = """
        - {dish: Tart, tags: [not tcs], steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, keeps: {counter: 1 day}}]}
      """;

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"low, 0", "middle, 1", "high, 2"})
  void of_three_racks_low_is_the_first_and_high_the_last(String level, int rack) throws IOException {
    Decoded supper = inTheOven("rack: %s".formatted(level));

    assertThat(supper.told().racks("Pie/bake")).containsExactly(rack);
  }

  @Test
  void two_trays_that_both_want_the_low_rack_follow_one_another() throws IOException {
    Decoded supper = inTheOven("rack: low", "rack: low");

    assertThat(supper.told().when("Pie/bake")).containsExactly("18:30-19:00");
    assertThat(supper.told().when("Pie 2/bake")).containsExactly("18:00-18:30");
    assertThat(supper.blocker("Pie 2/bake")).isEqualTo("Pie/bake");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void one_low_and_one_high_bake_together() throws IOException {
    Decoded supper = inTheOven("rack: low", "rack: high");

    assertThat(supper.told().when("Pie 2/bake")).containsExactly("18:30-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @ParameterizedTest(name = "a pie {0} cm high: the next tray on rack {1}")
  @CsvSource({"15, 1", "16, 2", "30, 2"})
  void what_is_taller_than_its_rack_closes_the_one_above(int height, int rack) throws IOException {
    Decoded supper = inTheOven("rack: low, stands: %d cm".formatted(height), "door shut: 0 min");

    assertThat(supper.told().when("Pie 2/bake")).containsExactly("18:30-19:00");
    assertThat(supper.told().racks("Pie 2/bake")).containsExactly(rack);
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void what_is_taller_than_two_racks_leaves_no_room_for_another() throws IOException {
    Decoded supper = inTheOven("rack: low, stands: 31 cm", "door shut: 0 min");

    assertThat(supper.told().when("Pie 2/bake")).containsExactly("18:00-18:30");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_preheat_ends_when_the_tart_goes_in() throws IOException {
    Decoded supper = AtSeven.supper(folder, ONE_OVEN.formatted("3 kW"), TART);

    assertThat(supper.told().ovens()).containsExactly("warming 180 C 18:15-18:30", "at 180 C 18:30-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  /**
   * In 24 minutes off, 159 K above the room fall to 107 K, and six minutes at 10.6 K warm them up again; 25 minutes off
   * and five to warm are not quite enough. Held: 30 min x 1 kW. Off: 6 min x the heating power.
   */
  @ParameterizedTest(name = "a gap of {0} minutes, heating at {1}: {2}")
  @CsvSource({"29, 3 kW, held", "30, 3 kW, off", "30, 5 kW, off", "30, 5.1 kW, held"})
  void an_oven_is_held_across_a_short_gap_and_off_across_a_long_one_if_that_costs_no_more(
      int gap, String heating, String what) throws IOException {
    Decoded supper = AtSeven.supper(folder, ONE_OVEN.formatted(heating), TART + TART.replace("Tart", "Pie"))
        .earlier("Pie/bake", 30 + gap);

    if (what.equals("held")) {
      assertThat(supper.told().ovens()).hasSize(2).last().asString().endsWith("-19:00");
    } else {
      assertThat(supper.told().ovens()).containsExactly("warming 180 C 17:15-17:30", "at 180 C 17:30-18:00",
          "warming 180 C 18:24-18:30", "at 180 C 18:30-19:00");
    }
    assertThat(supper.brokenRules()).isEmpty();
  }

  /** Off, somebody would have to switch it on at 18:24. */
  @Test
  void an_oven_that_nobody_could_switch_on_again_in_time_is_held() throws IOException {
    Decoded inTime = pieAndTartHalfAnHourApart("18:24");
    Decoded aMinuteLate = pieAndTartHalfAnHourApart("18:25");

    assertThat(inTime.told().ovens()).containsExactly("warming 180 C 17:15-17:30", "at 180 C 17:30-18:00",
        "warming 180 C 18:24-18:30", "at 180 C 18:30-19:00");
    assertThat(aMinuteLate.told().ovens())
        .containsExactly("warming 180 C 17:15-17:30", "at 180 C 17:30-19:00");
    assertThat(inTime.brokenRules()).isEmpty();
    assertThat(aMinuteLate.brokenRules()).isEmpty();
  }

  private Decoded pieAndTartHalfAnHourApart(String back) throws IOException {
    return AtSeven.supper(folder, ONE_OVEN.formatted("3 kW"),
        "{name: Ann, hours: {on the day: [10:00-18:00, %s-20:00]}}".formatted(back),
        TART + TART.replace("Tart", "Pie")).earlier("Pie/bake", 60).first("Pie/bake");
  }

  /** From 199 K above the room to 159 K, at 179 to 129 in 20 minutes: 13.7. */
  @Test
  void bread_at_220_is_out_fourteen_minutes_before_the_tart_at_180_goes_in() throws IOException {
    Decoded supper = AtSeven.supper(folder, ONE_OVEN.formatted("3 kW"),
        TART + TART.replace("Tart", "Bread").replace("180 C", "220 C"));

    assertThat(supper.told().when("Bread/bake")).containsExactly("17:46-18:16");
    assertThat(supper.blocker("Bread/bake")).isEqualTo("Tart/bake");
    assertThat(supper.told().ovens()).contains("cooling 180 C 18:16-18:30");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void an_oven_used_the_evening_before_starts_from_the_room_again() throws IOException {
    Decoded supper = AtSeven.supper(folder, ONE_OVEN.formatted("3 kW"),
        "{name: Ann, hours: {day before: 18:00-23:00, on the day: 18:00-20:00}}",
        TART + TART.replace("Tart", "Pie")).earlier("Pie/bake", 20 * 60);

    assertThat(supper.told().ovens()).containsExactly(
        "warming 180 C day -1 22:15-day -1 22:30", "at 180 C day -1 22:30-day -1 23:00",
        "warming 180 C 18:15-18:30", "at 180 C 18:30-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  /** Pies of half an hour at 180 C, with what is said of each. */
  private Decoded inTheOven(String... pies) throws IOException {
    StringBuilder dishes = new StringBuilder();
    for (int i = 0; i < pies.length; i++) {
      dishes.append(
          """
                - {dish: Pie%s, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, keeps: {counter: 1 day}, %s}]}
              """
              .formatted(i == 0 ? "" : " " + (i + 1), pies[i]));
    }
    return AtSeven.supper(folder, ONE_OVEN.formatted("3 kW"), dishes.toString());
  }
}
