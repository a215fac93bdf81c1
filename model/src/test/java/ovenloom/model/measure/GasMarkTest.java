package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasMarkTest {

  /** The British gas scale in Fahrenheit and whole Celsius: liquisearch.com, gas_mark/conversion. */
  @ParameterizedTest
  @CsvSource({"QUARTER, 1/4, 225, 107", "HALF, 1/2, 250, 121", "ONE, 1, 275, 135", "TWO, 2, 300, 149",
      "THREE, 3, 325, 163", "FOUR, 4, 350, 177", "FIVE, 5, 375, 191", "SIX, 6, 400, 204",
      "SEVEN, 7, 425, 218",
      "EIGHT, 8, 450, 232", "NINE, 9, 475, 246"})
  void a_gas_mark_is_as_hot_as_the_table_says(GasMark mark, String number, int fahrenheit, int celsius) {
    assertThat(mark.number()).isEqualTo(number);
    assertThat(mark.temperature()).isEqualTo(Temperature.fahrenheit(fahrenheit));
    assertThat(mark.temperature().inCelsius()).isCloseTo(celsius, within(0.5));
    assertThat(GasMark.at(Temperature.fahrenheit(fahrenheit))).isEqualTo(mark);
  }

  /**
   * Celsius as printed on British dials, to within six degrees once both are whole:
   * hintsandthings.co.uk (oventemp) and engineeredbydesign.co.uk (OvenTemps). Mark 3 is printed as
   * 160, 165 or 170; the last is out by seven.
   */
  @ParameterizedTest
  @CsvSource({"ONE, 140", "TWO, 150", "THREE, 160", "THREE, 165", "FOUR, 180", "FIVE, 190", "SIX, 200",
      "SEVEN, 220",
      "EIGHT, 230", "NINE, 240"})
  void the_dials_of_british_ovens_differ_from_the_table_by_six_degrees_at_most(GasMark mark, int printed) {
    assertThat(Math.round(mark.temperature().inCelsius())).isCloseTo(printed, within(6L));
  }

  @Test
  void there_are_eleven_marks_each_25_degrees_fahrenheit_hotter_than_the_one_before() {
    GasMark[] marks = GasMark.values();

    assertThat(marks).hasSize(11);
    for (int i = 1; i < marks.length; i++) {
      double step = marks[i].temperature().inFahrenheit() - marks[i - 1].temperature().inFahrenheit();
      assertThat(step).isCloseTo(25, within(0.002));
    }
  }

  @Test
  void there_is_no_mark_between_the_marks_nor_beyond_them() {
    assertThat(GasMark.at(Temperature.fahrenheit(360))).isNull();
    assertThat(GasMark.at(Temperature.celsius(177))).isNull();
    assertThat(GasMark.at(Temperature.fahrenheit(500))).isNull();
    assertThat(GasMark.at(Temperature.fahrenheit(200))).isNull();
  }
}
