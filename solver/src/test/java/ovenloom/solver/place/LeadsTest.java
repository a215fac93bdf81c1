package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.solver.supper.Decoded;

/** Where work begins or ends whose food does not keep until somebody is there for the next. */
class LeadsTest {

  private static final String KITCHEN = """
      burners: [small],
      cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: 60 x 40 x 20 cm}]}],
      vessels: {dish: {count: 2, size: 30 x 30 x 5 cm}}""";

  private static final String ANN = "{name: Ann, hours: {day before: 18:00-22:00, on the day: 10:00-20:00}}";

  @TempDir
  private Path folder;

  /** To be at the table at 19:00 it goes into the fridge at 11:00, an hour after Ann comes; or else the evening before. */
  @ParameterizedTest(name = "cooked for {0} minutes: chilled {1}")
  @CsvSource({"60, 11:00-19:00", "61, day -1 22:00-06:00"})
  void what_is_cooked_right_before_it_is_chilled_goes_in_when_there_was_time_to_cook_it(int minutes,
      String when)
      throws IOException {
    Decoded supper = AtSeven.supper(folder, KITCHEN, ANN, """
          - dish: Jelly
            arrives: cold
            tags: [not tcs]
            steps:
              - {do: boil, takes: %d min, burner: small, in: dish}
              - {do: set, takes: 8 h, cold: fridge, in: dish, keeps: {fridge: 1 day}}
        """.formatted(minutes));

    assertThat(supper.brokenRules()).isEmpty();
    assertThat(supper.told().when("Jelly/set")).containsExactly(when);
  }

  /**
   * Ann comes home at 18:30, so the mousse is chilled the evening before, when she leaves at 22:00. It keeps in the fridge and not in the
   * chiller: somebody has to carry it over.
   */
  @ParameterizedTest(name = "chilled in the {0}: {1}")
  @CsvSource({"chiller, day -1 21:00-day -1 22:00", "fridge, day -1 22:00-day -1 23:00"})
  void what_may_not_stay_where_it_is_chilled_is_done_while_somebody_is_there(String store, String when)
      throws IOException {
    Decoded supper = AtSeven.supper(folder, """
        cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: 60 x 40 x 20 cm}]},
          {name: chiller, holds: 2 C, shelves: [{name: only, size: 60 x 40 x 20 cm}]}],
        vessels: {dish: {count: 2, size: 30 x 30 x 5 cm}}""",
        "{name: Ann, hours: {day before: 18:00-22:00, on the day: 18:30-20:00}}", """
              - dish: Mousse
                arrives: cold
                tags: [not tcs]
                steps: [{do: chill, takes: 60 min, cold: %s, in: dish, keeps: {fridge: 1 day}}]
            """.formatted(store));

    assertThat(supper.brokenRules()).isEmpty();
    assertThat(supper.told().when("Mousse/chill")).containsExactly(when);
  }
}
