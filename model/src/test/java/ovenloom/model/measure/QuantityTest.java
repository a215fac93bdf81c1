package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;

import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

  @ParameterizedTest
  @CsvSource({"2 1/2 cups, 5, 2, CUP", "½ tsp, 1, 2, TEASPOON", "1.5 kg, 3, 2, KILOGRAM",
      "2⅔ cups, 8, 3, CUP",
      "2 ⅔ cups, 8, 3, CUP", "1⁄3 cup, 1, 3, CUP", "1 1⁄3 cup, 4, 3, CUP", "3/2 cups, 3, 2, CUP",
      ".5 l, 1, 2, LITRE",
      "2 fl. oz., 2, 1, FLUID_OUNCE", "2 fluid ounces, 2, 1, FLUID_OUNCE", "2 oz, 2, 1, OUNCE",
      "1 METRIC CUP, 1, 1, METRIC_CUP",
      "1 imperial cup, 1, 1, IMPERIAL_CUP", "1 label fl oz, 1, 1, LABEL_FLUID_OUNCE",
      "2 Tbsp, 2, 1, TABLESPOON",
      "250g, 250, 1, GRAM", "2\u00a01/2\u202fcups, 5, 2, CUP", "3, 3, 1, PIECE", "3 pieces, 3, 1, PIECE",
      "0 g, 0, 1, GRAM",
      "1000000 g, 1000000, 1, GRAM"})
  void an_amount_is_exact_and_has_its_unit(String text, int over, int under, Unit unit) {
    assertThat(good(Quantity.read(text))).isEqualTo(new Quantity(BigFraction.of(over, under), unit));
  }

  @ParameterizedTest
  @CsvSource({"½, 1, 2", "⅓, 1, 3", "⅔, 2, 3", "¼, 1, 4", "¾, 3, 4", "⅕, 1, 5", "⅖, 2, 5", "⅗, 3, 5",
      "⅘, 4, 5", "⅙, 1, 6",
      "⅚, 5, 6", "⅐, 1, 7", "⅛, 1, 8", "⅜, 3, 8", "⅝, 5, 8", "⅞, 7, 8", "⅑, 1, 9", "⅒, 1, 10"})
  void every_fraction_there_is_a_letter_for_is_understood(String glyph, int over, int under) {
    assertThat(good(Quantity.read(glyph + " cup")).amount()).isEqualTo(BigFraction.of(over, under));
    assertThat(good(Quantity.read("2" + glyph + " cup")).amount())
        .isEqualTo(BigFraction.of(over, under).add(2));
  }

  @ParameterizedTest
  @CsvSource({"12 eggs, 12, eggs", "3 cloves, 3, cloves", "2 large eggs, 2, large eggs", "3 pats, 3, pats",
      "2 rounds, 2, rounds", "6 half-shells, 6, half-shells", "2 oeufs d’oie, 2, oeufs d’oie",
      "3 Äpfel, 3, Äpfel",
      "'4  hen''s\u00a0eggs ', 4, hen's eggs"})
  void things_are_counted_by_their_own_word(String text, int many, String word) {
    assertThat(good(Quantity.read(text))).isEqualTo(new Quantity(BigFraction.of(many), Unit.PIECE, word));
  }

  @ParameterizedTest
  @CsvSource({"2 1/2 cups", "1/2 cup", "1 cup", "1 1/3 cups", "1/2 tsp", "3 tbsp", "1.5 kg", "250 g",
      "0.75 l", "3", "2 1/2",
      "12 eggs", "1 1/2 lb", "2 fl oz", "2 metric cups", "1 1/3 kg", "1/10 cup", "0.05 cup", "1/17 cup",
      "1/16 cup",
      "123.456789 kg"})
  void a_quantity_is_written_as_a_cook_would(String text) {
    assertThat(good(Quantity.read(text))).hasToString(text);
    assertThat(good(Quantity.read(text)).written()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"'1,5 kg', '1,5', 1.5 kg", "'1,500 g', '1,500', 1.5 g|1500 g", "'1,5', '1,5', 1 1/2",
      "3 m, m, 3 mg|3 ml",
      "2 T, T, 2 tsp|2 tbsp", "2 c, c, 2 cl|2 cups", "2 cpus, cpus, 2 cups", "2 tpsb, tpsb, 2 tbsp",
      "2 gramms, gramms, 2 g",
      "2 teaspons, teaspons, 2 tsp", "-3 eggs, -3, 3 eggs", "'3 eggs, beaten', 'eggs, beaten', ''",
      "3 x, x, ''",
      "2-3 cups, -3 cups, ''", "2 12 cups, 12 cups, ''", "2 cupss, cupss, 2 cups", "2 cups flour, flour, ''",
      "1/0 cup, 1/0, ''", "1/ cup, cup, ''",
      "1000000.1 g, 1000000.1, ''",
      "1234567890 g, 1234567890, ''", "1.1234567890 g, 1.1234567890, ''", "some, some, ''",
      "3 eggs2, eggs2, ''",
      "1. kg, kg, ''", "3 -eggs, -eggs, ''"})
  void what_is_no_quantity_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    var answer = Quantity.read(text);

    assertThat(marked(text, answer)).isEqualTo(wrong);
    assertThat(String.join("|", bad(answer).suggestions())).isEqualTo(meant);
  }

  @Test
  void a_quantity_by_weight_weighs_something_and_fills_nothing_known() {
    var twoPounds = good(Quantity.read("2 lb"));

    assertThat(twoPounds.mass()).isEqualTo(Mass.grams(907.185));
    assertThat(twoPounds.volume()).isNull();
  }

  @Test
  void a_quantity_by_volume_fills_something_and_weighs_nothing_known() {
    var thirdOfACup = good(Quantity.read("1/3 cup"));

    assertThat(thirdOfACup.volume()).isEqualTo(Volume.millilitres(78.863));
    assertThat(thirdOfACup.mass()).isNull();
  }

  @Test
  void eggs_are_neither_weighed_nor_poured() {
    assertThat(good(Quantity.read("12 eggs")).mass()).isNull();
    assertThat(good(Quantity.read("12 eggs")).volume()).isNull();
  }

  @Test
  void three_times_a_third_of_a_cup_is_a_cup() {
    assertThat(good(Quantity.read("1/3 cup")).times(BigFraction.of(3))).hasToString("1 cup");
    assertThat(good(Quantity.read("4 eggs")).times(BigFraction.of(5, 2))).hasToString("10 eggs");
  }

  @Test
  void no_quantity_is_below_nothing() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Quantity(BigFraction.of(-1), Unit.GRAM));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " eggs", "eggs ", "e", "cups", "fl oz", "3 eggs", "eggs, beaten", "gramms", "cup cakes"})
  void what_would_read_back_as_something_else_is_no_word_for_what_is_counted(String word) {
    assertThatIllegalArgumentException().isThrownBy(() -> new Quantity(BigFraction.ONE, Unit.PIECE, word));
  }

  @Test
  void only_pieces_are_counted_by_a_word() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Quantity(BigFraction.ONE, Unit.GRAM, "eggs"))
        .withMessageContaining("eggs");
  }
}
