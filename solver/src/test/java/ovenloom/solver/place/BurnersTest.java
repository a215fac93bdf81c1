package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.solver.supper.Decoded;

/** One pot to a burner, and the burner large enough. */
class BurnersTest {

  private static final String LARGE_AND_SMALL = """
      burners: [large, small],
      vessels: {kettle: {count: 2, burner: large}, pan: 4}""";

  @TempDir
  private Path folder;

  @Test
  void two_kettles_take_turns_on_the_one_large_burner() throws IOException {
    Decoded supper = AtSeven.supper(folder, LARGE_AND_SMALL, """
          - {dish: Soup, steps: [{do: boil, takes: 30 min, burner: small, in: kettle, keeps: {counter: 2 h}}]}
          - {dish: Stew, steps: [{do: boil, takes: 20 min, burner: small, in: kettle, keeps: {counter: 2 h}}]}
        """);

    assertThat(supper.told().when("Soup/boil")).containsExactly("18:30-19:00");
    assertThat(supper.told().when("Stew/boil")).containsExactly("18:10-18:30");
    assertThat(supper.told().burners("Stew/boil")).containsExactly("large burner 1");
    assertThat(supper.blocker("Soup/boil")).isEqualTo("nothing");
    assertThat(supper.blocker("Stew/boil")).isEqualTo("Soup/boil");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_pan_takes_the_small_burner_and_leaves_the_large_one_to_the_kettle() throws IOException {
    Decoded supper = AtSeven.supper(folder, LARGE_AND_SMALL, """
          - {dish: Sauce, steps: [{do: stir, takes: 30 min, burner: small, in: pan}]}
          - {dish: Soup, steps: [{do: boil, takes: 30 min, burner: small, in: kettle}]}
        """);

    assertThat(supper.told().burners("Sauce/stir")).containsExactly("small burner 1");
    assertThat(supper.told().when("Soup/boil")).containsExactly("18:30-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_recipe_that_asks_for_a_large_burner_gets_it_for_a_small_pan() throws IOException {
    Decoded supper = AtSeven.supper(folder, LARGE_AND_SMALL, """
          - {dish: Sauce, steps: [{do: sear, takes: 5 min, burner: large, in: pan}]}
        """);

    assertThat(supper.told().burners("Sauce/sear")).containsExactly("large burner 1");
  }

  @Test
  void two_pans_of_one_step_take_both_burners() throws IOException {
    Decoded supper = AtSeven.supper(folder, LARGE_AND_SMALL,
        """
              - {dish: Pancakes, steps: [{do: fry, takes: 20 min, burner: small, in: {pan: 2}, keeps: {counter: 1 h}}]}
              - {dish: Sauce, steps: [{do: stir, takes: 5 min, burner: small, in: pan, keeps: {counter: 1 h}}]}
            """);

    assertThat(supper.told().burners("Pancakes/fry")).containsExactly("small burner 1", "large burner 1");
    assertThat(supper.told().when("Sauce/stir")).containsExactly("18:35-18:40");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void two_pans_are_off_by_the_minute_one_of_the_burners_is_lent_out() throws IOException {
    Decoded supper = AtSeven.supper(folder, """
        burners: [small, {name: hot plate, size: large, taken: {on the day: 18:20-20:00}}],
        vessels: {pan: 4}""",
        """
              - {dish: Pancakes, steps: [{do: fry, takes: 20 min, burner: small, in: {pan: 2}, keeps: {counter: 1 h}}]}
            """);

    assertThat(supper.told().when("Pancakes/fry")).containsExactly("18:00-18:20");
    assertThat(supper.blocker("Pancakes/fry")).isEqualTo("hours");
    assertThat(supper.brokenRules()).isEmpty();
  }
}
