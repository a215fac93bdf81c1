package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.sheet.StripLine.Mark;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;

/** A while as one line of letters. */
class StripTest {

  private static final Clock CLOCK = new Clock(new Calendar(LocalDate.of(2026, 10, 10), null));

  private static Stretch from(String from, String to) {
    return new Stretch(at(from), at(to));
  }

  private static String drawn(Strip strip, Mark... marks) {
    return strip.drawn(new StripLine("Oven", List.of(marks), List.of(new Mark(from("17:00", "18:00"), '~'))),
        '.');
  }

  @ParameterizedTest
  @CsvSource({"17:00, 18:00, 60, 1", "17:00, 18:00, 59, 2", "9:00, 19:00, 40, 15", "0:00, 24:00, 40, 60"})
  void it_is_as_fine_as_the_letters_allow(String from, String to, int letters, int step) {
    assertThat(Strip.of(from(from, to), letters).step()).isEqualTo(step);
  }

  @Test
  void it_begins_and_ends_on_its_step_before_midnight_too() {
    assertThat(Strip.of(from("17:07", "18:52"), 12)).isEqualTo(new Strip(from("17:00", "19:00"), 10));
    assertThat(Strip.of(new Stretch(-65, 5), 8)).isEqualTo(new Strip(new Stretch(-70, 10), 10));
  }

  @Test
  void a_ruler_tells_times_that_are_far_enough_from_one_another() {
    assertThat(new Strip(from("17:00", "19:00"), 5).ruler(CLOCK, '-')).isEqualTo("17:00-------18:00-------");
    assertThat(new Strip(from("17:00", "21:00"), 15).ruler(CLOCK, '-')).isEqualTo("----18:00-------");
  }

  @ParameterizedTest
  @CsvSource({"17:50, 18:04, 2, 17:50--", "17:51, 17:59, 1, 17:51---", "17:50, 17:53, 1, 17:50"})
  void a_ruler_too_short_for_a_round_time_tells_the_first_minute(String from, String to, int step,
      String ruler) {
    assertThat(new Strip(from(from, to), step).ruler(CLOCK, '-')).isEqualTo(ruler);
  }

  @Test
  void a_letter_stands_for_what_is_there_in_any_of_its_minutes() {
    var strip = new Strip(from("17:00", "18:00"), 10);

    assertThat(drawn(strip, new Mark(from("17:19", "17:31"), 'B'))).isEqualTo("~BBB~~");
    assertThat(drawn(strip, new Mark(from("17:20", "17:30"), 'B'))).isEqualTo("~~B~~~");
  }

  @Test
  void the_letters_of_several_things_take_turns() {
    var strip = new Strip(from("17:00", "18:20"), 10);

    assertThat(drawn(strip, new Mark(from("17:00", "18:00"), 'B'), new Mark(from("17:20", "17:50"), 'P')))
        .isEqualTo("BBBPBB..");
  }
}
