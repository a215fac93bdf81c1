package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizeTest {

  @Test
  void a_rack_has_a_width_and_a_depth() {
    assertThat(good(Size.read("55 x 38 cm"))).isEqualTo(new Size(Length.cm(55), Length.cm(38), null));
  }

  @Test
  void a_shelf_has_a_height_besides() {
    assertThat(good(Size.read("50 x 35 x 20 cm")))
        .isEqualTo(new Size(Length.cm(50), Length.cm(35), Length.cm(20)));
  }

  @ParameterizedTest
  @CsvSource({"55 x 38 cm, 55 x 38 cm", "55x38cm, 55 x 38 cm", "55 × 38 cm, 55 x 38 cm",
      "55\u00a0×\u202f38 cm, 55 x 38 cm",
      "55 X 38 CM, 55 x 38 cm", "9x13 in, 9 x 13 in", "9\" x 13\", 9 x 13 in",
      "12 x 20 x 2 1/2 in, 12 x 20 x 2 1/2 in",
      "12 x 20 x 2½ in, 12 x 20 x 2 1/2 in", "60 cm x 40 cm, 60 x 40 cm", "60 x 40 cm x 5 cm, 60 x 40 x 5 cm",
      "530 x 325 mm, 53 x 32.5 cm", "32.5 x 17.6 cm, 32.5 x 17.6 cm", "5 x 4 mm, 5 x 4 mm",
      "10 x 8 in, 10 x 8 in",
      "1000 x 1 cm, 1000 x 1 cm"})
  void a_size_is_read_and_printed_back_in_one_unit(String text, String printed) {
    assertThat(good(Size.read(text))).hasToString(printed);
    assertThat(good(Size.read(text)).written()).isEqualTo(printed);
  }

  @Test
  void no_side_is_nothing() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Size(new Length(0), Length.cm(1)));
    assertThatIllegalArgumentException().isThrownBy(() -> new Size(Length.cm(1), new Length(0)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Size(Length.cm(1), Length.cm(2), new Length(0)))
        .withMessageContaining("0 mm");
  }

  @ParameterizedTest
  @CsvSource({"9x13, 9x13, 9 x 13 cm|9 x 13 in", "60 cm x 40, 60 cm x 40, 60 x 40 cm",
      "60 cm x 40 in, in, ''", "60 cm x 40 x 20 in, in, ''", "60 x 40 cm x 5, 60 x 40 cm x 5, 60 x 40 x 5 cm",
      "9 x 13 m, m, 9 x 13 cm|0.9 x 1.3 cm", "'55,5 x 38 cm', '55,5', 55.5 x 38 cm", "9 in, 9 in, ''",
      "9 x in, in, ''",
      "9 x 13 x, 9 x 13 x, ''", "9 x 13 x 2 x 4 in, x, ''", "9 x 0 in, 9 x 0 in, ''",
      "9 x 0.00001 cm, 9 x 0.00001 cm, ''", "-9 x 13 in, -9, 9 x 13 in",
      "1001 x 5 cm, 1001 x 5 cm, ''", "5 x 1001 cm, 5 x 1001 cm, ''", "5 x 5 x 1001 cm, 5 x 5 x 1001 cm, ''",
      "half sheet, half, ''"})
  void what_is_no_size_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    var answer = Size.read(text);

    assertThat(marked(text, answer)).isEqualTo(wrong);
    assertThat(String.join("|", bad(answer).suggestions())).isEqualTo(meant);
  }
}
