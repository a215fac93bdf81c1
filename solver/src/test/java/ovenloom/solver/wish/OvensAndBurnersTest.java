package ovenloom.solver.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.menu.Wish;
import ovenloom.solver.supper.Decoded;

/** Five points a turn of the dial, and one for a tenth of a kilowatt hour. */
class OvensAndBurnersTest {

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "a pie at {0} C an hour before a tart at 180 C: {1}")
  @CsvSource({"180, 0", "181, 5", "200, 5"})
  void another_mark_is_five_points_and_the_same_again_none(int mark, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Tart, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray}]}
          - {dish: Pie, steps: [{do: bake, takes: 30 min, bake: {at: %d C}, in: tray, keeps: {counter: 3 h}}]}
        """.formatted(mark)).earlier("Pie/bake", 90);

    assertThat(supper.points(Wish.DIAL)).isEqualTo(points);
  }

  @Test
  void the_stages_of_a_roast_are_in_its_recipe_and_its_first_mark_is_free() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - dish: Roast
            steps: [{do: roast, takes: 60 min, bake: [{at: 220 C, for: 20 min}, {at: 160 C}], in: tray}]
        """);

    assertThat(supper.points(Wish.DIAL)).isZero();
  }

  /** 220 for the roast, then its own 160; 180 for the tart after it is a turn. */
  @Test
  void a_tart_after_a_roast_turns_the_dial_from_where_the_roast_left_it() throws IOException {
    Decoded supper = WishedFor.supper(folder,
        """
              - {dish: Tart, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray}]}
              - dish: Roast
                steps:
                  - {do: roast, takes: 60 min, bake: [{at: 220 C, for: 20 min}, {at: 160 C}], in: tray, keeps: {counter: 3 h}}
            """);

    assertThat(supper.points(Wish.DIAL)).isEqualTo(5);
  }

  /** 15 minutes at 3 kW and the bake at 1 kW, in tenths of a kilowatt hour: 45 and the bake's minutes, by 6. */
  @ParameterizedTest(name = "{0} minutes: {1}")
  @CsvSource({"20, 10", "21, 11", "30, 12"})
  void a_bake_at_180_costs_its_preheat_and_its_own_minutes(int minutes, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Tart, steps: [{do: bake, takes: %d min, bake: {at: 180 C}, in: tray}]}
        """.formatted(minutes));

    assertThat(supper.points(Wish.ENERGY)).isEqualTo(points);
  }

  /** One and a half kilowatts for four minutes are a tenth of a kilowatt hour. */
  @ParameterizedTest(name = "{0} minutes: {1}")
  @CsvSource({"3, 0", "4, 1", "7, 1", "8, 2"})
  void four_minutes_of_a_burner_are_a_point(int minutes, long points) throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Sauce, steps: [{do: stir, takes: %d min, burner: small, in: pot}]}
        """.formatted(minutes));

    assertThat(supper.points(Wish.ENERGY)).isEqualTo(points);
  }

  /** 4 minutes and 20 turned low are 24. */
  @Test
  void a_pot_kept_on_its_burner_goes_on_costing() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Sauce, steps: [{do: stir, takes: 4 min, burner: small, in: pot, keeps: {burner: 1 h}}]}
        """).earlier("Sauce/stir", 20);

    assertThat(supper.told().waits("Sauce/stir")).containsExactly("small burner 1 18:40-19:00");
    assertThat(supper.points(Wish.ENERGY)).isEqualTo(6);
  }

  /** The tart's 45 + 30 and the sauce's 3 x 1.5 are 79.5, by 6: both together have one rounding. */
  @Test
  void ovens_and_burners_are_added_up_before_they_are_rounded() throws IOException {
    Decoded supper = WishedFor.supper(folder, """
          - {dish: Tart, steps: [{do: bake, takes: 30 min, bake: {at: 180 C}, in: tray}]}
          - {dish: Sauce, steps: [{do: stir, takes: 3 min, burner: small, in: pot}]}
        """);

    assertThat(supper.points(Wish.ENERGY)).isEqualTo(13);
  }
}
