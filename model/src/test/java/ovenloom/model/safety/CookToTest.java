package ovenloom.model.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.Temperature;

/** FDA Food Code 3-401.11(A), in degrees Fahrenheit as it is written there. */
class CookToTest {

  private static CookTo cookTo(String... tags) {
    return Objects.requireNonNull(CookTo.of(List.of(tags)));
  }

  @Test
  void poultry_is_cooked_to_165_for_no_time_at_all() {
    assertThat(cookTo("raw poultry").temperature()).isEqualTo(Temperature.fahrenheit(165));
    assertThat(cookTo("raw poultry").seconds()).isZero();
  }

  @Test
  void minced_meat_and_pooled_eggs_are_cooked_to_155_for_17_seconds() {
    for (String tag : List.of("raw ground meat", "raw egg")) {
      assertThat(cookTo(tag).temperature()).isEqualTo(Temperature.fahrenheit(155));
      assertThat(cookTo(tag).seconds()).isEqualTo(17);
    }
  }

  @Test
  void whole_meat_and_fish_are_cooked_to_145_for_15_seconds() {
    for (String tag : List.of("raw meat", "raw fish")) {
      assertThat(cookTo(tag).temperature()).isEqualTo(Temperature.fahrenheit(145));
      assertThat(cookTo(tag).seconds()).isEqualTo(15);
    }
  }

  @Test
  void of_a_dish_with_fish_and_chicken_the_chicken_counts() {
    assertThat(cookTo("raw fish", "milk", "raw poultry").tag()).isEqualTo("raw poultry");
  }

  @Test
  void raw_food_without_a_figure_is_cooked_as_hot_as_any() {
    assertThat(cookTo("raw snails").temperature()).isEqualTo(Temperature.fahrenheit(165));
    assertThat(cookTo("raw").temperature()).isEqualTo(Temperature.fahrenheit(165));
    assertThat(CookTo.ALL)
        .allSatisfy(each -> assertThat(each.temperature()).isLessThanOrEqualTo(cookTo("raw").temperature()));
  }

  @Test
  void what_is_not_raw_need_not_be_cooked() {
    assertThat(CookTo.of(List.of())).isNull();
    assertThat(CookTo.of(List.of("ready to eat", "fish", "milk"))).isNull();
  }

  @Test
  void every_figure_says_where_it_is_written() {
    assertThat(CookTo.ALL).allSatisfy(each -> assertThat(each.source()).hasToString(
        "FDA Food Code 2017, " + each.source().section()));
  }
}
