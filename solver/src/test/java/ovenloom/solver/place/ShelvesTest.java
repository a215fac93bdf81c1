package ovenloom.solver.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ovenloom.solver.supper.Decoded;

/** Raw food stands below what will not be cooked any more. */
class ShelvesTest {

  private static final String TWO_SHELVES = """
      ovens: [{name: oven, racks: {count: 3, size: 61 x 40 cm, clear: 15 cm}}],
      cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: 61 x 40 x 20 cm}, {name: bottom, size: 61 x 40 x 20 cm}]}],
      vessels: {dish: {count: 9, size: 30 x 30 x 5 cm}}""";

  private static final String ONE_SHELF = TWO_SHELVES.replace(", {name: bottom, size: 61 x 40 x 20 cm}", "");

  private static final String CHICKEN = """
        - dish: Chicken
          tags: [raw poultry]
          steps:
            - {do: marinate, takes: 60 min, cold: fridge, in: dish, keeps: {fridge: 1 day}}
            - {do: roast, takes: 30 min, bake: {at: 180 C}}
      """;

  private static final String CUSTARD = """
        - {dish: Custard, arrives: cold, steps: [{do: set, takes: 60 min, cold: fridge, in: dish}]}
      """;

  private static final String BIG_CUSTARD = CUSTARD.replace("in: dish", "in: {dish: 3}");

  @TempDir
  private Path folder;

  @Test
  void raw_chicken_marinates_on_the_bottom_and_the_custard_sets_on_top() throws IOException {
    Decoded supper = AtSeven.supper(folder, TWO_SHELVES, CHICKEN + CUSTARD);

    assertThat(supper.told().shelves("Chicken/marinate")).containsExactly("fridge bottom");
    assertThat(supper.told().shelves("Custard/set")).containsExactly("fridge top");
    assertThat(supper.told().when("Chicken/marinate")).containsExactly("17:30-18:30");
    assertThat(supper.told().when("Custard/set")).containsExactly("18:00-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void on_a_single_shelf_chicken_comes_out_the_minute_the_custard_goes_in() throws IOException {
    Decoded supper = AtSeven.supper(folder, ONE_SHELF, CUSTARD + CHICKEN.replace("keeps: {fridge: 1 day}",
        "keeps: {counter: 1 h}"));

    assertThat(supper.told().when("Custard/set")).containsExactly("18:00-19:00");
    assertThat(supper.told().when("Chicken/marinate")).containsExactly("17:00-18:00");
    assertThat(supper.blocker("Chicken/marinate")).isEqualTo("Custard/set");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void a_custard_on_both_shelves_leaves_the_chicken_no_place_below_it() throws IOException {
    Decoded supper = AtSeven.supper(folder, TWO_SHELVES,
        BIG_CUSTARD + CHICKEN.replace("keeps: {fridge: 1 day}",
            "keeps: {counter: 1 h}"));

    assertThat(supper.told().shelves("Custard/set")).containsExactly("fridge top", "fridge top",
        "fridge bottom");
    assertThat(supper.told().when("Chicken/marinate")).containsExactly("17:00-18:00");
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void two_chickens_may_share_a_shelf() throws IOException {
    Decoded supper = AtSeven.supper(folder, ONE_SHELF,
        CHICKEN + CHICKEN.replace("dish: Chicken", "dish: Hen"));

    assertThat(supper.told().when("Hen/marinate")).isEqualTo(supper.told().when("Chicken/marinate"));
    assertThat(supper.brokenRules()).isEmpty();
  }

  @Test
  void once_roasted_chicken_may_wait_on_any_shelf() throws IOException {
    Decoded supper = AtSeven.supper(folder, ONE_SHELF, CUSTARD + """
          - dish: Chicken
            tags: [raw poultry]
            arrives: cold
            steps: [{do: roast, takes: 30 min, bake: {at: 180 C}, in: dish, keeps: {fridge: 1 day}}]
        """).earlier("Chicken/roast", 90);

    assertThat(supper.told().waits("Chicken/roast")).containsExactly("fridge top 17:30-19:00");
    assertThat(supper.brokenRules()).isEmpty();
  }
}
