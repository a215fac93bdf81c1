package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.supper.Decoded;

/** Whose hands do what, and when they are free. */
class CrewTest {

  private static final String KITCHEN = """
      ovens: [{name: oven, racks: {count: 3, size: 45 x 38 cm, clear: 15 cm}}],
      burners: [small],
      vessels: {tray: {count: 6, size: 40 x 30 x 3 cm}, pan: 4}""";

  private static final String ANN_AND_BEN = """
      {name: Ann, hours: {on the day: 10:00-20:00}}, {name: Ben, skills: [carving], hours: {on the day: 10:00-18:30}}""";

  @TempDir
  private Path folder;

  @Test
  void what_takes_two_cooks_is_done_before_the_second_leaves() throws IOException {
    Decoded supper = chores(ANN_AND_BEN, "takes: 10 min, hands: throughout, cooks: 2");

    assertThat(supper.told().hands("Chore/do")).containsExactly("Ann and Ben 18:20-18:30");
    assertThat(supper.blocker("Chore/do")).isEqualTo("hours");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void what_takes_a_skill_is_done_by_the_one_who_has_it() throws IOException {
    Decoded supper = chores(ANN_AND_BEN, "takes: 10 min, hands: throughout, skill: carving");

    assertThat(supper.told().hands("Chore/do")).containsExactly("Ben 18:20-18:30");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @ParameterizedTest(name = "{0} minutes: {1}")
  @CsvSource({"15, Ann 18:45-19:00", "16, Ann 18:14-18:30"})
  void work_fits_between_a_break_and_the_table_or_comes_before_the_break(int minutes, String when)
      throws IOException {
    Decoded supper = chores(
        "{name: Ann, hours: {on the day: 10:00-20:00}, breaks: {on the day: 18:30-18:45}}",
        "takes: %d min, hands: throughout".formatted(minutes));

    assertThat(supper.told().hands("Chore/do")).containsExactly(when);
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_pot_simmers_on_through_a_break_and_not_once_everyone_has_gone() throws IOException {
    String soup = """
          - {dish: Soup, steps: [{do: simmer, takes: 40 min, burner: small, in: pan, keeps: {counter: 1 h}}]}
        """;
    Decoded onABreak = AtSeven.supper(folder, KITCHEN,
        "{name: Ann, hours: {on the day: 10:00-20:00}, breaks: {on the day: 18:30-18:45}}", soup);
    Decoded gone = AtSeven.supper(folder, KITCHEN,
        "{name: Ann, hours: {on the day: [10:00-18:30, 18:45-20:00]}}", soup);

    assertThat(onABreak.told().when("Soup/simmer")).containsExactly("18:20-19:00");
    assertThat(gone.told().when("Soup/simmer")).containsExactly("17:50-18:30");
    assertThat(onABreak.brokenRules()).isEmpty();
    assertThat(gone.brokenRules()).isEmpty();
  }

  @Test
  void one_cook_does_one_thing_and_then_the_other() throws IOException {
    Decoded supper = AtSeven.supper(folder, KITCHEN, """
          - {dish: Table, food: no, steps: [{do: lay, takes: 10 min, hands: throughout}]}
          - {dish: Flowers, food: no, steps: [{do: cut, takes: 5 min, hands: throughout}]}
        """);

    assertThat(supper.told().when("Table/lay")).containsExactly("18:50-19:00");
    assertThat(supper.told().when("Flowers/cut")).containsExactly("18:45-18:50");
    assertThat(supper.blocker("Flowers/cut")).isEqualTo("Table/lay");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void one_cook_loads_two_trays_in_one_opening() throws IOException {
    Decoded supper = AtSeven.supper(folder, KITCHEN, """
          - {dish: Tart, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray}]}
          - {dish: Pie, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray}]}
        """);

    assertThat(supper.told().hands("Tart/bake")).containsExactly("Ann 18:30-18:31", "Ann 18:59-19:00");
    assertThat(supper.told().hands("Pie/bake")).containsExactly("Ann 18:30-18:31", "Ann 18:59-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  /** Due at 18:45; late is tried before early. */
  @ParameterizedTest(name = "Ann is away from {0}, turns at {1}")
  @CsvSource({"18:43-18:49, 18:42-18:43", "18:42-18:47, 18:47-18:48", "18:42-18:48, 18:48-18:49"})
  void a_tray_is_turned_up_to_three_minutes_from_when_it_should_be(String pause, String turned)
      throws IOException {
    Decoded supper = turnedTray(pause, "");

    assertThat(supper.told().when("Tart/bake")).containsExactly("18:30-19:00");
    assertThat(supper.told().hands("Tart/bake"))
        .containsExactly("Ann 18:30-18:31", "Ann " + turned, "Ann 18:59-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_turn_that_is_sharp_moves_the_whole_bake() throws IOException {
    Decoded supper = turnedTray("18:43-18:48", ", sharp: yes");

    assertThat(supper.told().when("Tart/bake")).containsExactly("18:27-18:57");
    assertThat(supper.brokenRules()).isEmpty();
  }

  private Decoded turnedTray(String pause, String sharp) throws IOException {
    return AtSeven.supper(folder, KITCHEN,
        "{name: Ann, hours: {on the day: 10:00-20:00}, breaks: {on the day: %s}}".formatted(pause),
        """
              - dish: Tart
                steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray, hands: [{at: 15 min, for: 1 min%s}]}]
            """
            .formatted(sharp));
  }

  private Decoded chores(String cooks, String what) throws IOException {
    return AtSeven.supper(folder, KITCHEN, cooks, """
          - {dish: Chore, food: no, steps: [{do: do, %s}]}
        """.formatted(what));
  }
}
