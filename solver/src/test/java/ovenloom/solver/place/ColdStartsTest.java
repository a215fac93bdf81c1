package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.menu.StartState;
import ovenloom.solver.supper.Decoded;

/** How warm food is taken to be as it goes into the oven. */
class ColdStartsTest {

  private static final String KITCHEN = """
      burners: [small],
      ovens: {name: oven, dial: 100 C to 250 C, racks: {count: 1, size: 45 x 37 cm, clear: 15 cm}},
      vessels: {dish: {count: 2, size: 30 x 30 x 5 cm}, pot: {count: 1, size: 20 x 20 x 15 cm}}""";

  @TempDir
  private Path folder;

  @ParameterizedTest(name = "{0} minutes off the burner: {1}")
  @CsvSource({"0, STRAIGHT_ON", "5, STRAIGHT_ON", "30, RESTED"})
  void food_is_straight_on_for_five_minutes_off_the_heat(int minutes, StartState state) throws IOException {
    Decoded supper = AtSeven.supper(folder, KITCHEN,
        """
              - dish: Potatoes
                steps:
                  - {do: boil, takes: 20 min, burner: small, in: pot}
                  - {do: roast, takes: 40 min, bake: {at: 200 C}, in: dish, after: {boil: {least: %d min, most: 60 min}}}
            """
            .formatted(minutes));

    assertThat(supper.brokenRules()).isEmpty();
    assertThat(supper.plan().placements()).filteredOn(each -> each.step().equals("roast"))
        .extracting(each -> Objects.requireNonNull(each.baking()).state())
        .containsExactly(state);
  }
}
