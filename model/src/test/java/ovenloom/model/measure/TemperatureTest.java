package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTest {

  /** The fixed points: the kelvin is defined so, and NIST SP 811 appendix B gives the conversion. */
  @ParameterizedTest
  @CsvSource({"0, 32, 273150", "100, 212, 373150", "-40, -40, 233150", "-273.15, -459.67, 0",
      "74, 165.2, 347150"})
  void both_scales_agree_on_the_fixed_points(double celsius, double fahrenheit, long milliKelvin) {
    assertThat(Temperature.celsius(celsius).milliKelvin()).isEqualTo(milliKelvin);
    assertThat(Temperature.fahrenheit(fahrenheit).milliKelvin()).isEqualTo(milliKelvin);
    assertThat(Temperature.celsius(celsius).inFahrenheit()).isCloseTo(fahrenheit, within(1e-9));
    assertThat(Temperature.fahrenheit(fahrenheit).inCelsius()).isCloseTo(celsius, within(1e-9));
  }

  @Test
  void a_temperature_is_kept_to_the_nearest_thousandth_of_a_kelvin() {
    assertThat(Temperature.fahrenheit(350).milliKelvin()).isEqualTo(449_817);
    assertThat(Temperature.celsius(20.0004).milliKelvin()).isEqualTo(293_150);
    assertThat(Temperature.celsius(20.0006).milliKelvin()).isEqualTo(293_151);
  }

  /** A difference is never converted with the 32 degrees of a point: arithmetic of the two scales. */
  @Test
  void twenty_five_degrees_fahrenheit_hotter_is_13_9_kelvins_hotter() {
    var difference = Temperature.fahrenheit(375).kelvinsAbove(Temperature.fahrenheit(350));

    assertThat(difference).isCloseTo(13.9, within(0.05)).isCloseTo(25 / 1.8, within(0.0011));
  }

  /** As above, the other way round. */
  @Test
  void twenty_kelvins_hotter_is_36_degrees_fahrenheit_hotter() {
    var hotter = Temperature.fahrenheit(350).plusKelvins(20);

    assertThat(hotter.inFahrenheit()).isCloseTo(386, within(0.001));
  }

  @Test
  void colder_is_so_many_kelvins_below() {
    assertThat(Temperature.celsius(4).kelvinsAbove(Temperature.celsius(21))).isEqualTo(-17.0);
    assertThat(Temperature.celsius(21).plusKelvins(-17)).isEqualTo(Temperature.celsius(4));
  }

  @Test
  void the_hotter_comes_after_the_colder() {
    assertThat(Temperature.fahrenheit(350)).isGreaterThan(Temperature.celsius(176))
        .isLessThan(Temperature.celsius(177))
        .isEqualByComparingTo(Temperature.fahrenheit(350));
  }

  @Test
  void nothing_is_colder_than_absolute_zero() {
    assertThat(new Temperature(0).inCelsius()).isEqualTo(-273.15);
    assertThatIllegalArgumentException().isThrownBy(() -> new Temperature(-1)).withMessageContaining("-1 mK");
    assertThatIllegalArgumentException().isThrownBy(() -> Temperature.celsius(-273.16));
    assertThatIllegalArgumentException().isThrownBy(() -> Temperature.fahrenheit(-459.68));
    assertThatIllegalArgumentException().isThrownBy(() -> Temperature.celsius(20).plusKelvins(-300));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300})
  void no_temperature_is_not_a_number_or_without_end(double degrees) {
    assertThatIllegalArgumentException().isThrownBy(() -> Temperature.celsius(degrees));
    assertThatIllegalArgumentException().isThrownBy(() -> Temperature.fahrenheit(degrees));
  }

  @ParameterizedTest
  @CsvSource({"165 F, 165 F", "165F, 165 F", "74 C, 74 C", "-18 C, -18 C", "−18 °C, -18 C", "0 F, 0 F",
      "72.5 c, 72.5 C",
      "180 degrees Celsius, 180 C", "180℃, 180 C", "350℉, 350 F", "350 º F, 350 F", "212 deg. F, 212 F",
      "-100 C, -100 C",
      "600 C, 600 C", "4\u202f°C, 4 C", "4\u00a0C, 4 C"})
  void a_temperature_is_read_with_its_scale(String text, String meant) {
    assertThat(good(Temperature.read(text))).isEqualTo(of(meant));
  }

  private static Temperature of(String meant) {
    double degrees = Double.parseDouble(meant.substring(0, meant.length() - 2));
    return meant.endsWith("F") ? Temperature.fahrenheit(degrees) : Temperature.celsius(degrees);
  }

  @Test
  void a_bare_number_might_be_either_scale() {
    assertThat(bad(Temperature.read("165")).suggestions()).containsExactly("165 C", "165 F");
    assertThat(bad(Temperature.read("-18")).suggestions()).startsWith("-18 C", "-18 F");
  }

  @ParameterizedTest
  @CsvSource({"-101 C, -101 C", "601 C, 601 C", "1000000 F, 1000000 F", "gas 4, gas", "165 K, K",
      "165 F or so, or",
      "F, F", "'1,5 C', '1,5'", "--18 C, -18"})
  void what_is_no_temperature_is_refused_where_it_goes_wrong(String text, String wrong) {
    assertThat(marked(text, Temperature.read(text))).isEqualTo(wrong);
  }

  @Test
  void a_temperature_out_of_all_reason_is_answered_with_what_is_in_reason() {
    assertThat(bad(Temperature.read("1000000 F")).expected())
        .isEqualTo("something from -100 C (-148 F) to 600 C (1112 F)");
  }

  @Test
  void a_temperature_is_written_in_celsius_with_the_decimals_it_has() {
    assertThat(Temperature.celsius(180)).hasToString("180 C");
    assertThat(Temperature.celsius(-18)).hasToString("-18 C");
    assertThat(Temperature.fahrenheit(165)).hasToString("73.889 C");
  }
}
