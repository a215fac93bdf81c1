package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weights, volumes, powers and shares. */
class AmountsTest {

  @ParameterizedTest
  @CsvSource({"250 g, 250000, 250 g", "1.5 kg, 1500000, 1.5 kg", "1½ kg, 1500000, 1.5 kg",
      "2 kilos, 2000000, 2 kg",
      "500 mg, 500, 0.5 g", "999.999 g, 999999, 999.999 g", "1000 g, 1000000, 1 kg", "0 g, 0, 0 g",
      "1000 kg, 1000000000, 1000 kg"})
  void a_weight_is_read_and_written_in_grams_or_kilograms(String text, long milligrams, String written) {
    assertThat(good(Mass.read(text))).isEqualTo(new Mass(milligrams)).hasToString(written);
  }

  /** NIST Handbook 44, appendix C: 28.349523125 g and 453.59237 g. */
  @Test
  void ounces_and_pounds_are_weighed_to_the_nearest_milligram() {
    assertThat(good(Mass.read("1 oz"))).isEqualTo(Mass.grams(28.350));
    assertThat(good(Mass.read("2 lb"))).isEqualTo(Mass.grams(907.185));
  }

  @ParameterizedTest
  @CsvSource({"250 ml, 250000, 250 ml", "1000 ml, 1000000, 1 l", "0 ml, 0, 0 ml", "1.5 l, 1500000, 1.5 l",
      "1.5 L, 1500000, 1.5 l",
      "2 dl, 200000, 200 ml",
      "5 cl, 50000, 50 ml", "1 tsp, 4929, 4.929 ml", "2 cups, 473176, 473.176 ml",
      "1000 l, 1000000000, 1000 l"})
  void a_volume_is_read_and_written_in_millilitres_or_litres(String text, long microlitres, String written) {
    assertThat(good(Volume.read(text))).isEqualTo(new Volume(microlitres)).hasToString(written);
  }

  @ParameterizedTest
  @CsvSource({"3 kW, 3000, 3 kW", "1000 W, 1000, 1 kW", "0 W, 0, 0 W", "750 W, 750, 750 W",
      "750 watts, 750, 750 W", "2.4kw, 2400, 2.4 kW",
      "1250 W, 1250, 1.25 kW", "999 W, 999, 999 W", "0.5 W, 1, 1 W", "1000 kW, 1000000, 1000 kW"})
  void a_power_is_read_and_written_in_watts_or_kilowatts(String text, int watts, String written) {
    assertThat(good(Power.read(text))).isEqualTo(new Power(watts)).hasToString(written);
  }

  @ParameterizedTest
  @CsvSource({"5 %, 500, 5 %", "5%, 500, 5 %", "2.5 per cent, 250, 2.5 %", "20 percent, 2000, 20 %",
      "1/3 %, 33, 0.33 %", "0 %, 0, 0 %", "1000 %, 100000, 1000 %"})
  void a_share_is_read_and_written_in_the_hundred(String text, int hundredths, String written) {
    assertThat(good(Percent.read(text))).isEqualTo(new Percent(hundredths)).hasToString(written);
  }

  @Test
  void five_per_cent_is_a_twentieth() {
    assertThat(Percent.of(5)).isEqualTo(new Percent(500)).extracting(Percent::share).isEqualTo(0.05);
  }

  @ParameterizedTest
  @CsvSource({"250, 250, 250 g|250 kg|250 lb", "'1,5 kg', '1,5', 1.5 kg", "'1,500 g', '1,500', 1.5 g|1500 g",
      "1 k, k, 1 kg",
      "2 cups, cups, ''", "12 eggs, eggs, ''", "1000.001 kg, 1000.001 kg, ''", "-1 kg, -1, 1 kg",
      "2 puonds, puonds, 2 lb"})
  void what_is_no_weight_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    refused(Mass.read(text), text, wrong, meant);
  }

  @ParameterizedTest
  @CsvSource({"250, 250, 250 ml|250 l|250 cups", "'1,5 l', '1,5', 1.5 l", "2 kg, kg, ''",
      "1001 l, 1001 l, ''",
      "300 m, m, 300 ml"})
  void what_is_no_volume_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    refused(Volume.read(text), text, wrong, meant);
  }

  @ParameterizedTest
  @CsvSource({"3000, 3000, 3 kW", "750, 750, 750 W|750 kW", "'1,5 kW', '1,5', 1.5 kW", "3 k, k, 3 kW",
      "3 hp, hp, ''",
      "1001 kW, 1001 kW, ''", "-3 kW, -3, 3 kW"})
  void what_is_no_power_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    refused(Power.read(text), text, wrong, meant);
  }

  @ParameterizedTest
  @CsvSource({"5, 5, 5 %", "'2,5 %', '2,5', 2.5 %", "-5 %, -5, 5 %", "1000.1 %, 1000.1 %, ''",
      "5 per mil, mil, ''",
      "% 5, %, ''"})
  void what_is_no_share_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    refused(Percent.read(text), text, wrong, meant);
  }

  private static void refused(Parsed<?> answer, String text, String wrong, String meant) {
    assertThat(marked(text, answer)).isEqualTo(wrong);
    assertThat(String.join("|", bad(answer).suggestions())).isEqualTo(meant);
  }

  @Test
  void nothing_is_less_than_nothing() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Mass(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Volume(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Power(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Percent(-1));
  }

  @Test
  void the_greater_comes_after_the_smaller() {
    assertThat(Mass.grams(1.001)).isGreaterThan(Mass.grams(1));
    assertThat(Volume.millilitres(1.001)).isGreaterThan(Volume.millilitres(1));
    assertThat(new Power(2)).isGreaterThan(new Power(1));
    assertThat(new Percent(2)).isGreaterThan(new Percent(1));
  }
}
