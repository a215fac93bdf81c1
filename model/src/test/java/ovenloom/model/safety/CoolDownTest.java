package ovenloom.model.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.measure.Temperature;

/** FDA Food Code 3-501.14(A): 135 F to 70 F within 2 h, and 135 F to 41 F within 6 h in all. */
class CoolDownTest {

  private static final List<CoolDown> CODE = Profile.read("us-service").cool();

  /** The limit that is broken, in minutes; 0 where both are kept. */
  private static int broken(double[] celsius) {
    return CODE.stream()
        .map(stage -> stage.check(celsius, 0))
        .filter(Objects::nonNull)
        .mapToInt(slow -> slow.limit().minutes())
        .findFirst()
        .orElse(0);
  }

  private static final int A_DAY = 1440;

  /** From 165 F by a straight line to 70 F and on to 41 F; the minutes count from 135 F. */
  private static double[] in(int first, int all) {
    double[] celsius = new double[A_DAY];
    for (int i = 0; i < A_DAY; i++) {
      double fahrenheit = i <= first ? 135 - 65.0 * i / first : 70 - 29.0 * (i - first) / (all - first);
      celsius[i] = Temperature.fahrenheit(Math.max(38, fahrenheit)).inCelsius();
    }
    return celsius;
  }

  /** A food that cools by a law of its own, with k as a decimal logarithm an hour, in a fridge. */
  private static double[] exponential(double fridge, double k) {
    double[] celsius = new double[A_DAY];
    Arrays.setAll(celsius,
        i -> Temperature.fahrenheit(fridge + (135 - fridge) * Math.pow(10, -k * i / 60)).inCelsius());
    return celsius;
  }

  @Test
  void what_takes_one_hour_first_has_five_left_and_not_four() {
    assertThat(broken(in(60, 360))).isZero();
    assertThat(broken(in(60, 350))).isZero();
    assertThat(broken(in(60, 370))).isEqualTo(360);
  }

  @Test
  void five_minutes_more_than_two_hours_in_the_worst_degrees_is_too_slow() {
    assertThat(broken(in(120, 300))).isZero();
    assertThat(broken(in(125, 300))).isEqualTo(120);
    assertThat(CODE.getFirst().check(in(125, 300), 0)).isEqualTo(new CoolDown.TooSlow(CODE.getFirst(), 125));
  }

  /** For exponential cooling, which limit binds turns at 37.35 F; the rates are worked out from the clause. */
  @ParameterizedTest(name = "fridge at {0} F")
  @CsvSource({"35, 0.228", "37, 0.236", "39, 0.280", "40, 0.330"})
  void a_warmer_fridge_needs_a_faster_cooling(double fridge, double k) {
    assertThat(broken(exponential(fridge, k + 0.003))).isZero();
    assertThat(broken(exponential(fridge, k - 0.005))).isPositive();
  }

  @Test
  void below_thirty_seven_degrees_the_first_limit_binds_and_above_the_second() {
    assertThat(broken(exponential(35, 0.22))).isEqualTo(120);
    assertThat(broken(exponential(39, 0.27))).isEqualTo(360);
  }

  @Test
  void in_a_fridge_of_forty_one_degrees_nothing_ever_gets_there() {
    assertThat(broken(exponential(41, 0.6))).isEqualTo(360);
  }

  /** Passing the first limit to the minute at 38 F takes 6.27 h in all. */
  @Test
  void to_pass_the_first_limit_is_not_to_pass() {
    double k = Math.log10((135.0 - 38) / (70 - 38)) / 2;
    double hours = Math.log10((135.0 - 38) / (41 - 38)) / k;

    assertThat(hours).isCloseTo(6.27, within(0.03));
    assertThat(broken(exponential(38, k + 0.0005))).isEqualTo(360);
  }
}
