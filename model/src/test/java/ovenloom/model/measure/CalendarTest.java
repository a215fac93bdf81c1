package ovenloom.model.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.TimeZone;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Clock changes are those of the IANA time zone database. */
class CalendarTest {

  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  private static final List<ZoneId> ZONES = List.of(BERLIN, ZoneId.of("America/New_York"),
      ZoneId.of("Australia/Lord_Howe"), ZoneId.of("America/Sao_Paulo"), ZoneId.of("Africa/Cairo"),
      ZoneId.of("UTC"));

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest
  @CsvSource({"2026-10-10T00:00, 0", "2026-10-10T18:30, 1110", "2026-10-09T18:00, -360",
      "2026-10-11T00:00, 1440",
      "2026-10-08T00:00, -2880", "2026-10-10T00:00:59, 0", "2026-10-09T23:59:59, -1",
      "2026-10-09T23:59:00, -1"})
  void minutes_run_from_the_midnight_that_begins_the_day(LocalDateTime time, int minute) {
    var supper = new Calendar(LocalDate.parse("2026-10-10"), null);

    assertThat(supper.minuteOf(time)).isEqualTo(minute);
    assertThat(supper.at(minute)).isEqualTo(time.withSecond(0));
  }

  @Test
  void without_a_zone_the_clock_floats_wherever_the_machine_is() {
    var nightOfTheChange = new Calendar(LocalDate.parse("2026-10-25"), null);
    TimeZone before = TimeZone.getDefault();

    try {
      TimeZone.setDefault(TimeZone.getTimeZone(BERLIN));

      assertThat(nightOfTheChange.minuteOf(LocalDateTime.parse("2026-10-25T04:00"))).isEqualTo(240);
      assertThat(nightOfTheChange.minuteOf(LocalDateTime.parse("2026-10-26T00:00"))).isEqualTo(1440);
      assertThat(nightOfTheChange.at(180)).isEqualTo("2026-10-25T03:00");
    } finally {
      TimeZone.setDefault(before);
    }
  }

  @ParameterizedTest
  @CsvSource({"Europe/Berlin, 2026-10-25, 2026-10-25T01:59, 119",
      "Europe/Berlin, 2026-10-25, 2026-10-25T03:00, 240",
      "Europe/Berlin, 2026-10-25, 2026-10-25T04:00, 300", "Europe/Berlin, 2026-10-25, 2026-10-26T00:00, 1500",
      "Europe/Berlin, 2026-10-26, 2026-10-25T01:00, -1440",
      "America/New_York, 2026-11-01, 2026-11-01T02:00, 180",
      "America/New_York, 2026-11-01, 2026-11-02T00:00, 1500"})
  void the_night_the_clocks_go_back_is_an_hour_longer(ZoneId zone, LocalDate day, LocalDateTime time,
      int minute) {
    assertThat(new Calendar(day, zone).minuteOf(time)).isEqualTo(minute);
    assertThat(new Calendar(day, zone).at(minute)).isEqualTo(time);
  }

  @ParameterizedTest
  @CsvSource({"Europe/Berlin, 2026-03-29, 2026-03-29T01:59, 119",
      "Europe/Berlin, 2026-03-29, 2026-03-29T03:00, 120",
      "Europe/Berlin, 2026-03-29, 2026-03-30T00:00, 1380",
      "America/New_York, 2026-03-08, 2026-03-08T03:00, 120",
      "America/New_York, 2026-03-08, 2026-03-09T00:00, 1380"})
  void the_night_the_clocks_go_forward_is_an_hour_shorter(ZoneId zone, LocalDate day, LocalDateTime time,
      int minute) {
    assertThat(new Calendar(day, zone).minuteOf(time)).isEqualTo(minute);
    assertThat(new Calendar(day, zone).at(minute)).isEqualTo(time);
  }

  @Test
  void dough_that_proves_for_eight_hours_over_the_change_is_ready_when_the_clock_says_seven() {
    var sunday = new Calendar(LocalDate.parse("2026-10-25"), BERLIN);
    int mixed = sunday.minuteOf(LocalDateTime.parse("2026-10-25T00:00"));

    assertThat(sunday.at(mixed + 8 * 60)).isEqualTo("2026-10-25T07:00");
  }

  @Test
  void a_time_that_comes_twice_is_the_first_of_the_two() {
    var change = new Calendar(LocalDate.parse("2026-10-25"), BERLIN);

    assertThat(change.minuteOf(LocalDateTime.parse("2026-10-25T02:30"))).isEqualTo(150);
    assertThat(change.at(150)).isEqualTo(change.at(210)).isEqualTo("2026-10-25T02:30");
  }

  @ParameterizedTest
  @CsvSource({"2026-10-25T00:30:59.5Z, 150", "2026-10-25T01:30:00Z, 210", "2026-10-24T22:00:00Z, 0",
      "2026-10-24T21:59:59.999Z, -1", "2026-10-24T21:58:59Z, -2"})
  void a_moment_is_in_the_minute_it_falls_in_though_the_clock_shows_another_alike(Instant moment,
      int minute) {
    assertThat(new Calendar(LocalDate.parse("2026-10-25"), BERLIN).minuteOf(moment)).isEqualTo(minute);
  }

  @Test
  void a_time_the_clocks_skip_is_that_of_a_clock_nobody_has_put_forward() {
    var change = new Calendar(LocalDate.parse("2026-03-29"), BERLIN);

    assertThat(change.minuteOf(LocalDateTime.parse("2026-03-29T02:30"))).isEqualTo(150)
        .isEqualTo(change.minuteOf(LocalDateTime.parse("2026-03-29T03:30")));
  }

  @ParameterizedTest
  @CsvSource({"America/Sao_Paulo, 2018-11-04", "Africa/Cairo, 2024-04-26"})
  void a_day_whose_midnight_is_skipped_begins_with_its_first_moment(ZoneId zone, LocalDate day) {
    var calendar = new Calendar(day, zone);

    assertThat(calendar.at(0)).isEqualTo(day.atTime(1, 0));
    assertThat(calendar.minuteOf(day.atTime(1, 0))).isZero();
    assertThat(calendar.minuteOf(day.atStartOfDay())).isZero();
    assertThat(calendar.at(-1)).isEqualTo(day.minusDays(1).atTime(23, 59));
  }

  @Test
  void a_time_millennia_away_is_not_counted() {
    var supper = new Calendar(LocalDate.parse("2026-10-10"), null);

    assertThat(supper.minuteOf(LocalDateTime.parse("6026-10-10T00:00"))).isPositive();
    assertThatThrownBy(() -> supper.minuteOf(LocalDateTime.parse("9026-10-10T00:00")))
        .isInstanceOf(ArithmeticException.class);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void every_minute_reads_back_as_itself_or_as_the_first_of_two_that_look_alike(long seed) {
    var random = new Random(seed);
    var calendar = new Calendar(LocalDate.of(2018, 1, 1).plusDays(random.nextInt(3000)),
        ZONES.get(random.nextInt(ZONES.size())));
    int minute = random.nextInt(-400_000, 400_000);

    int back = calendar.minuteOf(calendar.at(minute));

    assertThat(back).isBetween(minute - 60, minute);
    assertThat(calendar.at(back)).isEqualTo(calendar.at(minute));
    assertThat(calendar.minuteOf(calendar.instant(minute).plusSeconds(random.nextInt(60)))).isEqualTo(minute);
  }

  @Test
  void two_moments_that_the_clock_shows_alike_are_an_hour_apart() {
    var night = new Calendar(LocalDate.parse("2026-10-25"), ZoneId.of("Europe/Berlin"));
    int first = night.minuteOf(LocalDateTime.parse("2026-10-25T02:30"));

    assertThat(night.at(first + 60)).isEqualTo(night.at(first));
    assertThat(night.instant(first)).isEqualTo("2026-10-25T00:30:00Z");
    assertThat(night.instant(first + 60)).isEqualTo("2026-10-25T01:30:00Z");
  }
}
