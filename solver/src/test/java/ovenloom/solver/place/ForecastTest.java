package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Food left out too long in all, by hand: two hours on the counter are the most (FSIS, the two-hour rule). */
class ForecastTest {

  @TempDir
  private Path folder;

  private Draft draft(int waits) throws IOException {
    return AtSeven.supper(folder, "burners: [small], vessels: {pot: {count: 2, size: 20 x 20 x 15 cm}}", """
          - dish: Pilaf
            tags: [tcs]
            steps:
              - {do: boil the rice, takes: 20 min, burner: small, in: pot, keeps: {counter: 4 h}}
              - {do: dress, takes: 10 min, hands: throughout, in: pot}
        """).earlier("Pilaf/boil the rice", waits).draft();
  }

  /** 99 minutes, 10 of dressing and 12 of serving are one too many. */
  @Test
  void the_step_whose_food_waits_longest_is_told_too_and_not_only_the_one_in_which_it_is_too_long()
      throws IOException {
    Draft draft = draft(99);

    assertThat(draft.tooLong(0)).isEqualTo(1);
    assertThat(draft.shortfall()).as("counted once").isEqualTo(draft.shortfall(1)).isPositive();
  }

  /** The rice waits for five minutes, and after an hour of it is dressed for two: 5, 10, 120 and 12 minutes are 27 too many. */
  @Test
  void where_the_dish_waits_for_the_table_too_long_its_last_step_is_told() throws IOException {
    Draft draft = AtSeven
        .supper(folder, "burners: [small], vessels: {pot: {count: 2, size: 20 x 20 x 15 cm}}", """
              - dish: Pilaf
                tags: [tcs]
                steps:
                  - {do: boil the rice, takes: 20 min, burner: small, in: pot, keeps: {counter: 4 h}}
                  - {do: dress, takes: 10 min, hands: throughout, in: pot, keeps: {counter: 4 h}}
            """)
        .earlier("Pilaf/boil the rice", 5)
        .earlier("Pilaf/dress", 120)
        .draft();

    assertThat(draft.tooLong(0)).isZero();
    assertThat(draft.tooLong(1)).isEqualTo(27);
  }

  @Test
  void two_hours_are_not_too_long() throws IOException {
    assertThat(draft(98).shortfall()).isZero();
  }
}
