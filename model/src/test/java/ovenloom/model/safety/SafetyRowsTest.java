package ovenloom.model.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Temperature;

/** Every published number that a rule reads, under the row it has on the page; which section it is from stands there. */
class SafetyRowsTest {

  private static final Path PAGE = Path.of("../docs/safety-rows.md");
  private static final Profile TRADE = Profile.read("us-service");
  private static final Profile HOME = Profile.read("us-home");
  private static final Profile UK = Profile.read("uk");

  private static List<String> rows(HoldTime hold, boolean fahrenheit) {
    return hold.rows()
        .stream()
        .map(row -> Math.round(fahrenheit ? row.temperature().inFahrenheit() : row.temperature().inCelsius())
            + " " + row.seconds())
        .toList();
  }

  private static HoldTime cook(Profile profile, String food) {
    return profile.cook()
        .stream()
        .filter(each -> each.food().equals(food))
        .map(Profile.Cook::hold)
        .findFirst()
        .orElseThrow();
  }

  private static Temperature f(int degrees) {
    return Temperature.fahrenheit(degrees);
  }

  /** FDA Food Code 2017, 3-401.11(A)(1) to (3) and (B)(2), in degrees Fahrenheit and seconds. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"F01, raw meat, 145 15", "F01, raw fish, 145 15",
      "F02, raw ground meat, 145 180;150 60;155 17;158 0", "F02, raw egg, 145 180;150 60;155 17;158 0",
      "F03, raw poultry, 165 0",
      "F04, whole roast, 130 6720;131 5340;133 3360;135 2160;136 1680;138 1080;140 720;142 480;144 300;145 240;"
          + "147 134;149 85;151 54;153 34;155 22;157 14;158 0"})
  void the_trade_cooks_raw_food_so_hot_for_so_long(String row, String food, String pairs) {
    assertThat(rows(cook(TRADE, food), /* fahrenheit= */ true)).as(row).containsExactly(pairs.split(";"));
  }

  /** Of the line through F04: tenfold in 10 F, at most 0.04 off in the logarithm. */
  @Test
  void f05_a_roast_takes_a_tenth_of_the_time_ten_degrees_hotter() {
    HoldTime roast = cook(TRADE, "whole roast");

    for (int low = 130; low <= 147; low++) {
      double ratio = roast.seconds(f(low).inCelsius()) / roast.seconds(f(low + 10).inCelsius());
      assertThat(Math.log10(ratio)).as(low + " F").isBetween(0.92, 1.08);
    }
  }

  /** FDA Food Code 2017, 3-401.11(B)(1). */
  @Test
  void f06_the_oven_of_a_roast_under_ten_pounds_is_hotter_and_less_so_with_the_fan() {
    Mass tenPounds = Mass.grams(4535.924);

    assertThat(TRADE.roastOven())
        .extracting(Profile.RoastOven::mode, Profile.RoastOven::under, Profile.RoastOven::at)
        .containsExactly(tuple("still", tenPounds, f(350)), tuple("still", null, f(250)),
            tuple("fan", tenPounds, f(325)), tuple("fan", null, f(250)));
    assertThat(TRADE.roastOven()).allMatch(each -> each.source().section().equals("3-401.11(B)(1)"));
  }

  /** USDA-FSIS Safe Minimum Internal Temperature Chart; F37 is its three minutes of rest. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"F27, raw poultry, 165 0", "F27, raw ground meat, 160 0", "F27, raw egg, 160 0",
      "F27, raw fish, 145 0", "F37, raw meat, 145 180", "F37, whole roast, 145 180"})
  void a_home_cooks_raw_food_so_hot_for_so_long(String row, String food, String pair) {
    assertThat(rows(cook(HOME, food), /* fahrenheit= */ true)).as(row).containsExactly(pair);
  }

  /** FSA advice; all but 70 C for 2 min from memory. */
  @ParameterizedTest
  @CsvSource({"raw poultry", "raw ground meat", "raw egg"})
  void f42_seventy_degrees_for_two_minutes_or_as_long_at_others(String food) {
    List<String> pairs = List.of("60 2700", "65 600", "70 120", "75 30", "80 6");

    assertThat(rows(cook(UK, food), /* fahrenheit= */ false)).isEqualTo(pairs);
    assertThat(rows(UK.reheat().getFirst().hold(), /* fahrenheit= */ false)).isEqualTo(pairs);
  }

  /** FDA Food Code 2017, 3-403.11(A) and (D); F27 for leftovers at home. */
  @Test
  void f10_f11_f27_what_was_cooled_is_heated_to_165_and_in_the_trade_within_two_hours() {
    assertThat(TRADE.reheat()).singleElement().satisfies(reheat -> {
      assertThat(rows(reheat.hold(), /* fahrenheit= */ true)).containsExactly("165 15");
      assertThat(reheat.within()).isEqualTo(new Profile.Within(f(41), 120));
    });
    assertThat(HOME.reheat()).singleElement().satisfies(reheat -> {
      assertThat(rows(reheat.hold(), /* fahrenheit= */ true)).containsExactly("165 0");
      assertThat(reheat.within()).isNull();
    });
  }

  /** FDA Food Code 2017, 3-501.14(A); F44 is practice of the trade. */
  @Test
  void f14_f44_cooked_food_cools_in_two_hours_and_six_in_all_or_in_ninety_minutes() {
    assertThat(TRADE.cool()).extracting(CoolDown::from, CoolDown::to, CoolDown::minutes)
        .containsExactly(tuple(f(135), f(70), 120), tuple(f(135), f(41), 360));
    assertThat(UK.cool()).extracting(CoolDown::from, CoolDown::to, CoolDown::minutes)
        .containsExactly(tuple(Temperature.celsius(63), Temperature.celsius(8), 90));
  }

  /** FDA Food Code 2017, 3-501.16(A)(1); FSIS; Food Hygiene (Wales) Regulations 2006, schedule 4. */
  @Test
  void f17_f28_f38_food_is_kept_at_135_f_140_f_or_63_c() {
    assertThat(TRADE.hot()).extracting(Profile.Limit::temperature).containsExactly(f(135));
    assertThat(HOME.hot()).extracting(Profile.Limit::temperature).containsExactly(f(140));
    assertThat(UK.hot()).extracting(Profile.Limit::temperature).containsExactly(Temperature.celsius(63));
  }

  /** FDA Food Code 2017, 3-501.13: in a fridge at 41 F. */
  @Test
  void f23_the_trade_thaws_at_41_f() {
    assertThat(TRADE.thawed()).extracting(Profile.Limit::temperature).containsExactly(f(41));
  }

  /** FDA Food Code 2017, 3-501.17; Cold Food Storage Chart. */
  @Test
  void f19_f29_cooked_food_is_kept_for_seven_days_or_four() {
    assertThat(TRADE.days()).extracting(Profile.Days::most).containsExactly(7);
    assertThat(HOME.days()).extracting(Profile.Days::most).containsExactly(4);
  }

  /** FDA Food Code 2017, 3-501.19(B) and (C). */
  @Test
  void f20_f21_f22_by_the_clock_alone_it_is_four_hours_or_six_where_it_stays_at_70_f() {
    assertThat(TRADE.timeOnly()).singleElement()
        .isEqualTo(new Profile.TimeOnly(f(41), f(135), 240, 240, new Profile.Cool(f(70), 360), false,
            TRADE.timeOnly().getFirst().source()));
  }

  /** FSIS, Danger Zone. */
  @Test
  void f28_two_hours_between_40_and_140_f_and_one_in_air_over_90() {
    assertThat(HOME.out()).singleElement()
        .isEqualTo(new Profile.OutOfTemperature(f(40), f(140), 120, f(90), 60,
            HOME.out().getFirst().source()));
  }

  /** FSA Guidance on Temperature Control, 2007, paragraphs 42-49 and 57-59. */
  @Test
  void f39_f41_in_the_uk_it_is_one_period_of_two_hours_below_63_c_or_four_above_8() {
    assertThat(UK.timeOnly()).singleElement()
        .isEqualTo(new Profile.TimeOnly(Temperature.celsius(8), Temperature.celsius(63), 120, 240, null, true,
            UK.timeOnly().getFirst().source()));
  }

  /** From the top down, as a health service's handout and Sioux Falls Health have it; F24 is Food Code 3-302.11(A). */
  @Test
  void f24_r01_r03_what_is_cooked_hotter_stands_lower_and_chicken_below_ground_beef() {
    List<Integer> down = Stream.of("raw fish", "raw meat", "raw ground meat", "raw poultry")
        .map(tag -> (int) Math.round(
            Objects.requireNonNull(CookTo.of(List.of(tag))).temperature().inFahrenheit()))
        .toList();

    assertThat(down).containsExactly(145, 145, 155, 165);
    assertThat(CookTo.of(List.of("ready to eat"))).isNull();
  }

  /** Food Code 2017, 1-201.10(B): raw food of animals from the start; what is cooked once it is. */
  @Test
  void f25_raw_food_must_be_kept_cold_and_a_loaf_need_not() {
    assertThat(Perishable.isFromTheStart(List.of("raw fish"))).isTrue();
    assertThat(Perishable.isFromTheStart(List.of("bread"))).isFalse();
    assertThat(Perishable.isOnceCooked(null)).isTrue();
  }

  @Test
  void every_row_is_on_the_page_and_once() throws IOException {
    List<String> rows = Stream.concat(numbered("F", 45), numbered("R", 4)).toList();

    assertThat(Files.readAllLines(PAGE)
        .stream()
        .filter(line -> line.matches("\\| [FR]\\d\\d .*"))
        .map(line -> line.substring(2, 5)))
        .containsExactlyInAnyOrderElementsOf(rows);
  }

  private static Stream<String> numbered(String letter, int last) {
    return IntStream.rangeClosed(1, last).mapToObj(row -> String.format(Locale.ROOT, "%s%02d", letter, row));
  }
}
