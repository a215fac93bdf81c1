package ovenloom.model.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.measure.Temperature;

class HoldTimeTest {

  private static final Source CODE = new Source("FDA Food Code", "2017", "3-401.11");

  /** 3-401.11(A)(2), its pairs. */
  private static final HoldTime GROUND = hold("raw ground meat");

  /** 3-401.11(B)(2), all seventeen rows. */
  private static final HoldTime ROAST = hold("whole roast");

  private static HoldTime hold(String food) {
    return Profile.read("us-service")
        .cook()
        .stream()
        .filter(each -> each.food().equals(food))
        .map(Profile.Cook::hold)
        .findFirst()
        .orElseThrow();
  }

  private static HoldTime table(int... pairs) {
    HoldTime.Row[] rows = new HoldTime.Row[pairs.length / 2];
    Arrays.setAll(rows, i -> new HoldTime.Row(Temperature.fahrenheit(pairs[2 * i]), pairs[2 * i + 1]));
    return new HoldTime(List.of(rows), CODE);
  }

  /** In the oven from cold, as hot as this for so long, and out again at once. */
  private static double[] held(double fahrenheit, int minutes) {
    double[] celsius = new double[minutes + 3];
    Arrays.fill(celsius, Temperature.fahrenheit(fahrenheit).inCelsius());
    celsius[0] = 20;
    celsius[celsius.length - 1] = 20;
    return celsius;
  }

  @ParameterizedTest(name = "{0} F for {1} min")
  @CsvSource({"130, 112", "131, 89", "133, 56", "135, 36", "136, 28", "138, 18", "140, 12", "142, 8",
      "144, 5", "145, 4"})
  void a_roast_held_by_a_row_is_done_and_two_minutes_less_is_not_enough(double fahrenheit, int minutes) {
    assertThat(ROAST.isMet(held(fahrenheit, minutes))).isTrue();
    assertThat(ROAST.isMet(held(fahrenheit, minutes - 2))).isFalse();
  }

  @ParameterizedTest(name = "{0} F for {1} s")
  @CsvSource({"147, 134", "149, 85", "151, 54", "153, 34", "155, 22", "157, 14", "158, 0"})
  void the_hotter_rows_are_read_to_the_second(double fahrenheit, double seconds) {
    assertThat(ROAST.seconds(Temperature.fahrenheit(fahrenheit).inCelsius())).isCloseTo(seconds,
        within(0.01));
  }

  /** The line through the rows falls tenfold in 10 F; 134 F is about 45 minutes. */
  @Test
  void between_two_rows_time_falls_as_their_logarithms_do() {
    assertThat(ROAST.seconds(Temperature.fahrenheit(134).inCelsius()) / 60).isCloseTo(45, within(0.5));
    assertThat(ROAST.seconds(Temperature.fahrenheit(137).inCelsius()) / 60).isCloseTo(22.4, within(0.5));
    assertThat(ROAST.seconds(Temperature.fahrenheit(129.9).inCelsius())).isInfinite();
    assertThat(ROAST.seconds(Temperature.fahrenheit(200).inCelsius())).isZero();
  }

  @Test
  void it_falls_strictly_up_to_where_it_is_enough_to_get_there() {
    double last = Double.POSITIVE_INFINITY;
    for (double fahrenheit = 130; fahrenheit <= 157; fahrenheit += 0.25) {
      double seconds = ROAST.seconds(Temperature.fahrenheit(fahrenheit).inCelsius());
      assertThat(seconds).isLessThan(last);
      last = seconds;
    }
  }

  @Test
  void each_pair_for_ground_meat_is_enough_alone_and_a_degree_less_is_not() {
    assertThat(GROUND.isMet(held(145, 3))).isTrue();
    assertThat(GROUND.isMet(held(150, 1))).isTrue();
    assertThat(GROUND.seconds(Temperature.fahrenheit(155).inCelsius())).isCloseTo(17, within(0.01));
    assertThat(GROUND.seconds(Temperature.fahrenheit(154).inCelsius())).isGreaterThan(17);
    assertThat(GROUND.isMet(held(144, 600))).isFalse();
  }

  @Test
  void two_short_holds_are_not_one_long_one() {
    double[] twice = new double[40];
    Arrays.fill(twice, Temperature.fahrenheit(140.5).inCelsius());
    twice[0] = 20;
    twice[20] = 20;
    twice[39] = 20;

    assertThat(ROAST.isMet(held(140.5, 12))).isTrue();
    assertThat(table(140, 20 * 60, 141, 19 * 60).isMet(twice)).isFalse();
  }

  @Test
  void a_table_that_asks_for_more_where_it_is_hotter_is_refused() {
    assertThatThrownBy(() -> table(140, 60, 150, 60)).hasMessageContaining("row 1");
    assertThatThrownBy(() -> new HoldTime(List.of(), CODE)).hasMessageContaining("no row");
  }
}
