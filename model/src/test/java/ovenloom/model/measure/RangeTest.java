package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RangeTest {

  @ParameterizedTest
  @CsvSource({"40-45 min, 40, 45", "25–30 min, 25, 30", "25 — 30 min, 25, 30", "40 to 45 min, 40, 45",
      "25\u00a0–\u202f30\u00a0min, 25, 30", "1-1 1/2 h, 60, 90", "1–1½ h, 60, 90", "1 1/2-2 h, 90, 120",
      "40 min - 1 h, 40, 60", "1 h 10 min - 1 h 20 min, 70, 80", "2-3 days, 2880, 4320",
      "PT40M-PT45M, 40, 45",
      "40-40 min, 40, 40", "20-90 s, 1, 2"})
  void an_uncertain_time_has_a_least_and_a_most(String text, int least, int most) {
    assertThat(good(Range.read(text))).isEqualTo(new Range(least, most));
  }

  @ParameterizedTest
  @CsvSource({"4 h, 240", "1 h 15 min, 75", "1h15min, 75", "12 h, 720", "36 h, 2160", "3 days, 4320",
      "1 day, 1440",
      "1 week, 10080", "1 day 2 h 3 min, 1563", "90 min, 90", "½ h, 30", "1½ h, 90", "1 1/3 h, 80",
      "1.25 h, 75",
      "45 minutes, 45", "2 hrs., 120", "1 MIN, 1", "0 min, 0", "366 days, 527040"})
  void a_certain_time_is_one_figure(String text, int minutes) {
    assertThat(good(Range.read(text))).isEqualTo(Range.exactly(minutes));
  }

  @ParameterizedTest
  @CsvSource({"30 s, 1", "60 s, 1", "61 s, 2", "1 min 1 s, 2", "2 1/2 min, 3", "1/7 h, 9", "0 s, 0",
      "PT90S, 2", "PT0.1S, 1"})
  void seconds_are_rounded_up_to_whole_minutes(String text, int minutes) {
    assertThat(good(Range.read(text))).isEqualTo(Range.exactly(minutes));
  }

  /** The forms of ISO 8601-1:2019, 5.5.2: weeks alone, days before a time, a decimal only in the last part. */
  @ParameterizedTest
  @CsvSource({"PT1H15M, 75", "PT15M, 15", "pt15m, 15", "P1DT2H, 1560", "P2D, 2880", "P1W, 10080",
      "PT1.5H, 90",
      "P0.5D, 720", "PT1H0.5M, 61", "PT90M, 90", "P1DT2H3M4S, 1564"})
  void a_time_may_be_written_as_iso_8601(String text, int minutes) {
    assertThat(good(Range.read(text))).isEqualTo(Range.exactly(minutes));
  }

  @ParameterizedTest
  @ValueSource(strings = {"P", "PT", "P1DT", "P1", "PT1H2D", "P1W2D", "PT1.5H3M", "PT1M1H", "PT1H1H", "P1H",
      "PT1D", "P-1D",
      "PT1234567890M", "PT.5H", "P1D T2H", "PTH"})
  void what_only_looks_like_iso_8601_is_refused(String text) {
    assertThat(bad(Range.read(text)).from()).isLessThan(bad(Range.read(text)).to());
  }

  /** ISO 8601 tells the two apart by the T alone. */
  @Test
  void a_month_is_no_length_of_time_though_a_minute_is() {
    var month = bad(Range.read("P1M"));

    assertThat(month.expected())
        .isEqualTo("days or weeks, since years and months differ (\"P1M\" is a month, \"PT1M\" a minute)");
    assertThat(month.suggestions()).containsExactly("1 min");
    assertThat(bad(Range.read("P1Y")).expected()).isEqualTo(month.expected());
    assertThat(bad(Range.read("P1Y2DT3H")).expected()).isEqualTo(month.expected());
  }

  @ParameterizedTest
  @CsvSource({"40, 40, 40 min|40 h", "40-45, 40-45, 40-45 min|40-45 h", "15 m, m, 15 min",
      "1 m 30 s, m, 2 min",
      "45-40 min, 45-40 min, 40-45 min", "1-1/2 h, 1-1/2 h, 1 h 30 min|30-60 min", "1:15, :15, 1 h 15 min",
      "1 h 15, 1 h 15, 1 h 15 min", "'1,5 h', '1,5', 1 h 30 min", "'PT1,5H', 'PT1', 1 h 30 min",
      "-5 min, -5, 5 min",
      "-PT15M, -PT15M, 15 min", "+5 min, +5, 5 min", "40 minuts, minuts, 40 min", "2 huors, huors, 2 h",
      "15 min 1 h, 15 min 1 h, ''", "1 h 2 h, 1 h 2 h, ''", "10^12 h, ^12, ''",
      "1000000000000 h, 1000000000000, ''",
      "1/0 h, 1/0, ''", "367 days, 367 days, ''", "527041 min, 527041 min, ''", "5 min more, more, ''",
      "40- min, min, ''", "1-1 h 30 min, 30, ''", "half an hour, half, ''", "40 min-, 40 min-, ''"})
  void what_is_no_time_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    var answer = Range.read(text);

    assertThat(marked(text, answer)).isEqualTo(wrong);
    assertThat(String.join("|", bad(answer).suggestions())).isEqualTo(meant);
  }

  @Test
  void the_message_says_what_a_time_looks_like_or_what_is_wrong_with_this_one() {
    assertThat(bad(Range.read("soon")).expected())
        .isEqualTo("a time like \"40 min\", \"1 h 15 min\", \"40-45 min\" or \"3 days\"");
    assertThat(bad(Range.read("45-40 min")).expected())
        .isEqualTo("the shorter time first, like \"40-45 min\"");
    assertThat(bad(Range.read("400 days")).expected()).isEqualTo("a time of at most 366 days");
    assertThat(bad(Range.read("15 min 1 h")).expected()).isEqualTo("each unit once, the largest first");
  }

  @ParameterizedTest
  @CsvSource({"45, 45, 45 min", "60, 60, 1 h", "75, 75, 1 h 15 min", "720, 720, 12 h", "1440, 1440, 24 h",
      "2160, 2160, 36 h", "2880, 2880, 2 days", "4320, 4320, 3 days", "2945, 2945, 49 h 5 min", "0, 0, 0 min",
      "40, 45, 40-45 min", "60, 90, 60-90 min", "120, 180, 2-3 h", "90, 180, 90-180 min",
      "90, 181, 1 h 30 min - 3 h 1 min", "1440, 2880, 1-2 days", "0, 1440, 0-1 day", "0, 5, 0-5 min"})
  void a_time_is_written_in_the_largest_units_that_fit(int least, int most, String written) {
    assertThat(new Range(least, most)).hasToString(written);
    assertThat(good(Range.read(written))).isEqualTo(new Range(least, most));
  }

  @Test
  void no_time_is_below_nothing_or_has_its_most_below_its_least() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(-1, 5));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(46, 45)).withMessageContaining("46");
  }
}
