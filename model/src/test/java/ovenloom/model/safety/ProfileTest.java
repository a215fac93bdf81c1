package ovenloom.model.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import ovenloom.model.measure.Temperature;

/** The limits as their sources have them; which those are stands beside each number in the files. */
class ProfileTest {

  static final List<String> NAMES = Profile.NAMES;

  private static HoldTime hold(String profile, String food) {
    return Profile.read(profile)
        .cook()
        .stream()
        .filter(cook -> cook.food().equals(food))
        .findFirst()
        .orElseThrow()
        .hold();
  }

  @ParameterizedTest
  @FieldSource("NAMES")
  void every_limit_has_its_source(String name) {
    Profile profile = Profile.read(name);

    List<Source> sources = Stream.of(
        profile.cook().stream().map(each -> each.hold().source()),
        profile.reheat().stream().map(each -> each.hold().source()),
        profile.cool().stream().map(CoolDown::source),
        profile.hot().stream().map(Profile.Limit::source),
        profile.cold().stream().map(Profile.Limit::source),
        profile.days().stream().map(Profile.Days::source),
        profile.out().stream().map(Profile.OutOfTemperature::source),
        profile.timeOnly().stream().map(Profile.TimeOnly::source)).flatMap(each -> each).toList();
    assertThat(sources).hasSizeGreaterThan(5).allSatisfy(source -> {
      assertThat(source.document()).isNotBlank();
      assertThat(source.edition()).isNotBlank();
      assertThat(source.section()).isNotBlank();
    });
  }

  /** The order on the shelves and the profile of the trade say the same. */
  @Test
  void raw_food_stands_in_the_order_in_which_the_food_code_has_it_cooked() {
    assertThat(CookTo.ALL).isNotEmpty()
        .allSatisfy(
            cook -> assertThat(hold("us-service", cook.tag()).rows())
                .contains(new HoldTime.Row(cook.temperature(), cook.seconds())));
  }

  @Test
  void at_home_minced_meat_and_eggs_are_cooked_five_degrees_hotter_than_in_the_trade() {
    for (String food : List.of("raw ground meat", "raw egg")) {
      assertThat(hold("us-home", food).rows())
          .containsExactly(new HoldTime.Row(Temperature.fahrenheit(160), 0));
    }
    assertThat(hold("us-home", "raw poultry").rows()).isEqualTo(hold("us-service", "raw poultry").rows());
  }

  @Test
  void food_is_kept_hot_at_135_140_or_145_degrees_and_cold_at_41_40_or_46() {
    assertThat(Profile.read("us-service").hot().getFirst().temperature())
        .isEqualTo(Temperature.fahrenheit(135));
    assertThat(Profile.read("us-home").hot().getFirst().temperature()).isEqualTo(Temperature.fahrenheit(140));
    assertThat(Profile.read("uk").hot().getFirst().temperature()).isEqualTo(Temperature.celsius(63));
    assertThat(Profile.read("us-service").cold().getFirst().temperature())
        .isEqualTo(Temperature.fahrenheit(41));
    assertThat(Profile.read("us-home").cold().getFirst().temperature()).isEqualTo(Temperature.fahrenheit(40));
    assertThat(Profile.read("uk").cold().getFirst().temperature()).isEqualTo(Temperature.celsius(8));
  }

  /** Food Code 3-501.17 against the Cold Food Storage Chart. */
  @Test
  void the_trade_keeps_food_seven_days_and_a_home_four() {
    assertThat(Profile.read("us-service").days()).extracting(Profile.Days::most).containsExactly(7);
    assertThat(Profile.read("us-home").days()).extracting(Profile.Days::most).containsExactly(4);
  }

  @Test
  void two_hours_between_40_and_140_degrees_are_all_and_one_in_great_heat() {
    assertThat(Profile.read("us-home").out()).singleElement().satisfies(out -> {
      assertThat(out.from()).isEqualTo(Temperature.fahrenheit(40));
      assertThat(out.to()).isEqualTo(Temperature.fahrenheit(140));
      assertThat(out.minutes()).isEqualTo(120);
      assertThat(out.hotAir()).isEqualTo(Temperature.fahrenheit(90));
      assertThat(out.then()).isEqualTo(60);
    });
  }

  /** Food Code 3-403.11: 165 F for 15 s, within two hours. */
  @Test
  void what_is_reheated_in_the_trade_gets_to_165_within_two_hours() {
    Profile.Reheat reheat = Profile.read("us-service").reheat().getFirst();

    assertThat(reheat.hold().rows()).containsExactly(new HoldTime.Row(Temperature.fahrenheit(165), 15));
    assertThat(reheat.within()).isEqualTo(new Profile.Within(Temperature.fahrenheit(41), 120));
  }

  /** Food Code 3-501.19(B), (C); FSA Guidance on Temperature Control, 2007, paragraphs 42-49 and 57-59. */
  @Test
  void by_the_clock_alone_food_stands_out_for_four_hours_or_six_and_in_the_uk_for_two_if_it_was_hot() {
    assertThat(Profile.read("us-service").timeOnly()).singleElement().satisfies(limit -> {
      assertThat(limit.cold()).isEqualTo(Temperature.fahrenheit(41));
      assertThat(limit.hot()).isEqualTo(Temperature.fahrenheit(135));
      assertThat(List.of(limit.afterHot(), limit.afterCold())).containsExactly(240, 240);
      assertThat(limit.cool()).isEqualTo(new Profile.Cool(Temperature.fahrenheit(70), 360));
      assertThat(limit.once()).isFalse();
    });
    assertThat(Profile.read("uk").timeOnly()).singleElement().satisfies(limit -> {
      assertThat(limit.cold()).isEqualTo(Temperature.celsius(8));
      assertThat(limit.hot()).isEqualTo(Temperature.celsius(63));
      assertThat(List.of(limit.afterHot(), limit.afterCold())).containsExactly(120, 240);
      assertThat(limit.cool()).isNull();
      assertThat(limit.once()).isTrue();
    });
    assertThat(Profile.read("us-home").timeOnly()).isEmpty();
  }

  @Test
  void the_strictest_of_each_is_all_of_them_at_once_but_for_what_is_only_practice() {
    Profile all = Profile.strictest();

    assertThat(all.hot().stream().map(Profile.Limit::temperature).max(Comparator.naturalOrder()))
        .contains(Temperature.celsius(63));
    assertThat(all.cold().stream().map(Profile.Limit::temperature).min(Comparator.naturalOrder()))
        .contains(Temperature.fahrenheit(40));
    assertThat(all.cool()).isEqualTo(Profile.read("us-service").cool());
    assertThat(Profile.read("uk").cool()).hasSize(1);
    assertThat(all.cook()).hasSize(15);
  }

  @Test
  void a_profile_that_nobody_wrote_is_refused() {
    assertThatThrownBy(() -> Profile.read("mars")).isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("mars");
  }
}
