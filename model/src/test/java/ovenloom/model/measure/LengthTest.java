package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {

  /** The international inch: NIST SP 811 appendix B. */
  @Test
  void an_inch_is_exactly_25_4_millimetres() {
    assertThat(Length.in(1)).isEqualTo(Length.mm(25.4)).isEqualTo(Length.cm(2.54));
    assertThat(Length.in(1).micrometres()).isEqualTo(25_400);
    assertThat(Length.in(0.125).micrometres()).isEqualTo(3_175);
  }

  @Test
  void the_longer_comes_after_the_shorter() {
    assertThat(Length.in(1)).isGreaterThan(Length.cm(2.5)).isLessThan(Length.cm(2.6));
  }

  @Test
  void no_length_is_below_nothing_or_no_number() {
    assertThat(new Length(0).micrometres()).isZero();
    assertThatIllegalArgumentException().isThrownBy(() -> new Length(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> Length.cm(Double.NaN));
  }

  @ParameterizedTest
  @CsvSource({"15 cm, 150000", "15cm, 150000", "65 mm, 65000", "2 1/2 in, 63500", "2½ in, 63500",
      "9\", 228600",
      "9 ″, 228600", "1 inch, 25400", "2 inches, 50800", "0.5 in., 12700", "1/3 in, 8467", "1/16 in, 1588",
      "10 centimetres, 100000", "1000 cm, 10000000", "0 mm, 0", ".5 cm, 5000"})
  void a_length_is_read_with_its_unit(String text, long micrometres) {
    assertThat(good(Length.read(text))).isEqualTo(new Length(micrometres));
  }

  @ParameterizedTest
  @CsvSource({"15, 15, 15 cm|15 in|1.5 cm", "2 m, m, 200 cm|2 mm", "'1,5 cm', '1,5', 1.5 cm",
      "-5 cm, -5, 5 cm",
      "9 inchs, inchs, 9 in", "1000.1 cm, 1000.1 cm, ''", "5 kg, kg, ''", "5 cm 3, 3, ''", "cm, cm, ''",
      "2 1/ cm, cm, ''"})
  void what_is_no_length_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    var answer = Length.read(text);

    assertThat(marked(text, answer)).isEqualTo(wrong);
    assertThat(String.join("|", bad(answer).suggestions())).isEqualTo(meant);
  }

  @ParameterizedTest
  @CsvSource({"550000, 55 cm", "176000, 17.6 cm", "5000, 5 mm", "2000, 2 mm", "0, 0 mm", "228600, 9 in",
      "63500, 2 1/2 in",
      "3175, 1/8 in", "10000, 1 cm", "9999, 9.999 mm", "127000, 5 in", "1270000, 127 cm",
      "1234567, 123.4567 cm"})
  void a_length_is_written_as_someone_with_a_ruler_would(long micrometres, String written) {
    assertThat(new Length(micrometres)).hasToString(written);
  }
}
