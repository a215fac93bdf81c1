package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;
import static ovenloom.model.measure.TemperatureUnit.CELSIUS;
import static ovenloom.model.measure.TemperatureUnit.FAHRENHEIT;
import static ovenloom.model.measure.TemperatureUnit.GAS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettingTest {

  @Test
  void a_setting_is_a_temperature_and_the_unit_it_was_written_in() {
    assertThat(good(Setting.read("350 F"))).isEqualTo(new Setting(Temperature.fahrenheit(350), FAHRENHEIT));
    assertThat(good(Setting.read("180 C"))).isEqualTo(new Setting(Temperature.celsius(180), CELSIUS));
    assertThat(good(Setting.read("gas 4"))).isEqualTo(new Setting(Temperature.fahrenheit(350), GAS));
  }

  @ParameterizedTest
  @CsvSource({"350 F, 350 F", "350F, 350 F", "350 °F, 350 F", "350°f, 350 F", "350 Fahrenheit, 350 F",
      "180 C, 180 C",
      "180 °C, 180 C", "180\u00a0°\u202fC, 180 C", "180 degrees centigrade, 180 C", "177.5 C, 177.5 C",
      "0 C, 0 C",
      "600 C, 600 C", "32 F, 32 F", "1112 F, 1112 F", "gas 4, gas 4", "Gas Mark 6, gas 6",
      "gas mark 6, gas 6",
      "mark 6, gas 6", "gas 1/2, gas 1/2", "gas ½, gas 1/2", "gas 1⁄4, gas 1/4", "gas 0.25, gas 1/4",
      "GAS 9, gas 9",
      "'  350  F ', 350 F", "012 C, 12 C"})
  void a_setting_is_printed_back_in_its_own_unit(String text, String printed) {
    assertThat(good(Setting.read(text)).written()).isEqualTo(printed);
    assertThat(good(Setting.read(text))).hasToString(printed);
  }

  @ParameterizedTest
  @CsvSource({"350, 350, 350 F|350 C", "350 K, K, 350 F", "180 K, K, 180 C", "300 K, K, 300 C",
      "301 K, K, 301 F", "4, 4, gas 4|4 C",
      "180°, 180°, 180 F|180 C",
      "350 degrees, 350 degrees, 350 F|350 C", "350 Farenheit, Farenheit, 350 F", "'3,50 F', '3,50', ''",
      "'350,0 F', '350,0', 350 F", "-20 C, -20 C, 20 C", "300 C 4, 4, ''", "350 F!, !, ''", "gas, gas, ''",
      "gas 10, 10, ''", "gas 4.5, 4.5, ''", "gas 4 F, F, ''", "hot, hot, ''", "350-375 F, -375, ''"})
  void what_is_no_setting_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    var answer = Setting.read(text);

    assertThat(marked(text, answer)).isEqualTo(wrong);
    assertThat(String.join("|", bad(answer).suggestions())).isEqualTo(meant);
  }

  @Test
  void the_message_says_what_a_setting_looks_like() {
    assertThat(bad(Setting.read("350 K")).expected())
        .isEqualTo("an oven setting like \"350 F\", \"180 C\" or \"gas 4\"");
    assertThat(bad(Setting.read("gas 10")).expected()).isEqualTo("a gas mark: 1/4, 1/2 or 1 to 9");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1000000 F", "601 C", "1113 F", "31 F", "-1 C", "1000000000000 C"})
  void no_oven_is_set_below_freezing_or_above_600_degrees(String text) {
    assertThat(marked(text, Setting.read(text))).isEqualTo(text.replace("1000000000000 C", "1000000000000"));
  }

  @Test
  void a_blank_is_no_setting() {
    assertThat(bad(Setting.read(""))).extracting(Parsed.Bad::from, Parsed.Bad::to).containsExactly(0, 0);
    assertThat(bad(Setting.read("   "))).extracting(Parsed.Bad::from, Parsed.Bad::to).containsExactly(0, 3);
  }

  @Test
  void the_same_heat_in_another_unit_is_another_setting() {
    assertThat(Setting.gas(GasMark.FOUR)).isNotEqualTo(Setting.fahrenheit(350))
        .extracting(Setting::temperature)
        .isEqualTo(Setting.fahrenheit(350).temperature());
  }

  @Test
  void a_gas_oven_has_only_marks() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Setting(Temperature.celsius(180), GAS))
        .withMessageContaining("180 C");
  }
}
