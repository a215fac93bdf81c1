package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTest {

  /** 21 CFR 101.9(b)(5)(viii), the measures of nutrition labels, as quoted at ucum.org, ticket 120. */
  @ParameterizedTest
  @CsvSource({"METRIC_TEASPOON, 5", "METRIC_TABLESPOON, 15", "LABEL_CUP, 240", "LABEL_FLUID_OUNCE, 30",
      "LABEL_OUNCE, 28"})
  void label_measures_are_round(Unit unit, int millilitresOrGrams) {
    assertThat(unit.smallest()).isEqualTo(BigFraction.of(millilitresOrGrams * 1000));
  }

  /** NIST Handbook 44 appendix C and SP 811 appendix B, in millilitres; five digits as given at ucum.org, ticket 120. */
  @ParameterizedTest
  @CsvSource({"TEASPOON, 4.92892, 0.000005", "TABLESPOON, 14.7868, 0.00005", "FLUID_OUNCE, 29.5735, 0.00005",
      "CUP, 236.5882, 0.00005", "GALLON, 3785.411784, 0"})
  void spoons_and_cups_are_parts_of_the_gallon(Unit unit, double millilitres, double givenTo) {
    assertThat(unit.smallest().doubleValue() / 1000).isCloseTo(millilitres, within(givenTo));
  }

  /** The same pages, in grams; from memory beyond the fifth digit. */
  @ParameterizedTest
  @CsvSource({"OUNCE, 28.349523125", "POUND, 453.59237"})
  void ounces_are_parts_of_the_pound(Unit unit, double grams) {
    assertThat(unit.smallest().doubleValue() / 1000).isEqualTo(grams);
  }

  /** NIST SP 430, Household Weights and Measures. */
  @ParameterizedTest
  @CsvSource({"3, TEASPOON, TABLESPOON", "16, TABLESPOON, CUP", "48, TEASPOON, CUP", "2, CUP, PINT",
      "4, CUP, QUART",
      "8, FLUID_OUNCE, CUP", "4, QUART, GALLON", "16, OUNCE, POUND", "1000, GRAM, KILOGRAM",
      "10, CENTILITRE, DECILITRE",
      "10, DECILITRE, LITRE", "1000, MILLILITRE, LITRE", "1000, MILLIGRAM, GRAM"})
  void so_many_of_the_small_make_one_of_the_large(int many, Unit small, Unit large) {
    assertThat(small.smallest().multiply(many)).isEqualTo(large.smallest());
  }

  /** Cups elsewhere: wgc2010.org, in millilitres. */
  @ParameterizedTest
  @CsvSource({"IMPERIAL_CUP, 284.131, 0.0005", "METRIC_CUP, 250, 0"})
  void other_countries_have_other_cups(Unit unit, double millilitres, double givenTo) {
    assertThat(unit.smallest().doubleValue() / 1000).isCloseTo(millilitres, within(givenTo));
  }

  @Test
  void a_litre_is_ten_centimetres_cubed_so_a_gallon_of_231_cubic_inches_is_what_it_says() {
    BigFraction inch = BigFraction.of(254, 1000);

    assertThat(inch.pow(3).multiply(231).multiply(1_000_000)).isEqualTo(Unit.GALLON.smallest());
  }

  @Test
  void every_unit_is_read_by_the_symbol_it_is_written_with() {
    for (Unit unit : Unit.values()) {
      assertThat(Unit.WORDS.meaning(unit.symbol())).isEqualTo(unit);
    }
  }
}
