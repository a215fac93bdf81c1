package ovenloom.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.cli.sheet.HandPlan.at;

import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import ovenloom.model.measure.Calendar;

class ClockTest {

  private static final int DAY = 24 * 60;
  private static final LocalDate SATURDAY = LocalDate.of(2026, 10, 10);

  private final Clock clock = new Clock(new Calendar(SATURDAY, null));

  @Test
  void days_count_back_from_the_day_in_words() {
    assertThat(clock.heading(SATURDAY)).isEqualTo("Saturday 10 October, on the day");
    assertThat(clock.heading(SATURDAY.minusDays(1))).isEqualTo("Friday 9 October, the day before");
    assertThat(clock.heading(SATURDAY.minusDays(2))).isEqualTo("Thursday 8 October, two days before");
    assertThat(clock.heading(SATURDAY.minusDays(12))).isEqualTo("Monday 28 September, 12 days before");
    assertThat(clock.heading(SATURDAY.plusDays(1))).isEqualTo("Sunday 11 October, the day after");
  }

  @Test
  void a_time_on_another_day_says_which() {
    assertThat(clock.time(at("18:05"), at("9:00"))).isEqualTo("18:05");
    assertThat(clock.time(at("18:05"), at("9:00") - DAY)).isEqualTo("Saturday 18:05");
    assertThat(clock.time(at("18:05"), at("9:00") - 6 * DAY)).isEqualTo("Saturday 18:05");
    assertThat(clock.time(at("18:05"), at("9:00") - 7 * DAY)).isEqualTo("Saturday 10 October 18:05");
  }

  @Test
  void the_end_of_a_day_is_midnight_and_the_beginning_of_the_next_one_00_00() {
    assertThat(clock.time(DAY, at("23:00"))).isEqualTo("midnight");
    assertThat(clock.time(DAY, at("23:00") - DAY)).isEqualTo("Sunday 00:00");
    assertThat(clock.column(DAY)).isEqualTo("00:00");
  }

  @Test
  void the_night_the_clocks_go_back_has_an_hour_more() {
    var night = new Clock(new Calendar(LocalDate.of(2026, 10, 25), ZoneId.of("Europe/Paris")));

    assertThat(night.column(at("2:30"))).isEqualTo("02:30");
    assertThat(night.column(at("3:30"))).isEqualTo("02:30");
    assertThat(night.column(at("4:30"))).isEqualTo("03:30");
  }
}
