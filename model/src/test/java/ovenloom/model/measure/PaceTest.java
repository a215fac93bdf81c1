package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static ovenloom.model.measure.Readings.bad;
import static ovenloom.model.measure.Readings.good;
import static ovenloom.model.measure.Readings.marked;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaceTest {

  @ParameterizedTest
  @CsvSource({"10 min + 20 s a portion, 10, 10, 20", "20 s a portion, 0, 0, 20", "20 S A PORTION, 0, 0, 20",
      "10-15 min + 2 min a portion, 10, 15, 120",
      "1/2 min per portion, 0, 0, 30", "1 min 30 s each portion, 0, 0, 90", "1 min/portion, 0, 0, 60",
      "1/7 min a portion, 0, 0, 9", "10 min+20 s a portion, 10, 10, 20", "1 day a portion, 0, 0, 86400",
      "PT10M + PT20S a portion, 10, 10, 20", "30 s + 20 s a portion, 1, 1, 20"})
  void work_may_grow_with_the_portions(String text, int least, int most, int seconds) {
    assertThat(good(Pace.read(text))).isEqualTo(new Pace(least, most, seconds));
  }

  @Test
  void any_time_is_a_pace_that_does_not_grow() {
    assertThat(good(Pace.read("40-45 min"))).isEqualTo(Pace.steady(new Range(40, 45)))
        .isEqualTo(new Pace(40, 45, 0));
    assertThat(Pace.steady(new Range(40, 45)).minutesFor(12)).isEqualTo(new Range(40, 45));
  }

  @ParameterizedTest
  @CsvSource({"10, 10, 20, 12, 14, 14", "10, 15, 20, 12, 14, 19", "10, 10, 20, 13, 15, 15",
      "10, 10, 20, 0, 10, 10",
      "0, 0, 20, 1, 1, 1", "0, 0, 20, 3, 1, 1", "0, 0, 20, 4, 2, 2", "0, 0, 20, 0, 0, 0", "0, 0, 0, 1, 1, 1",
      "0, 5, 0, 1, 1, 5", "0, 0, 1, 100000000, 1666667, 1666667"})
  void the_minutes_round_up_and_are_one_at_least_for_anyone_at_table(int least, int most, int seconds,
      int portions,
      int atLeast, int atMost) {
    assertThat(new Pace(least, most, seconds).minutesFor(portions)).isEqualTo(new Range(atLeast, atMost));
  }

  @Test
  void a_dinner_for_more_than_the_world_takes_longer_than_can_be_counted() {
    var slow = new Pace(0, 0, 86_400);

    assertThatThrownBy(() -> slow.minutesFor(Integer.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void nobody_asks_for_fewer_than_no_portions() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Pace(1, 1, 1).minutesFor(-1))
        .withMessageContaining("-1");
  }

  @Test
  void no_pace_is_below_nothing_or_has_its_most_below_its_least() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Pace(1, 1, -1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Pace(-1, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Pace(2, 1, 1));
  }

  @ParameterizedTest
  @CsvSource({"20, 20, 20 min|20 h|20 s a portion", "10 min + 20 s, 10 min + 20 s, 10 min + 20 s a portion",
      "10 min + 20 a portion, a, 10 min + 20 s a portion", "1 m a portion, m, 1 min a portion",
      "'1,5 min a portion', '1,5', 90 s a portion", "20-30 s a portion, 20-30 s a portion, ''",
      "2 days a portion, 2 days a portion, ''", "10 min + 2 days a portion, 2 days a portion, ''",
      "20 s a guest, guest, ''", "20 s portion, portion, ''", "10 min +, 10 min +, ''",
      "10 min + 20 s a portion each, each, ''",
      "+ 20 s a portion, +, 20 s a portion"})
  void what_is_no_pace_is_refused_with_what_may_have_been_meant(String text, String wrong, String meant) {
    var answer = Pace.read(text);

    assertThat(marked(text, answer)).isEqualTo(wrong);
    assertThat(String.join("|", bad(answer).suggestions())).isEqualTo(meant);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 20, 20 s a portion", "0, 0, 120, 2 min a portion", "0, 0, 90, 90 s a portion",
      "10, 15, 20, 10-15 min + 20 s a portion", "0, 5, 20, 0-5 min + 20 s a portion",
      "75, 75, 0, 1 h 15 min"})
  void a_pace_is_written_as_a_cook_would(int least, int most, int seconds, String written) {
    assertThat(new Pace(least, most, seconds)).hasToString(written);
  }
}
