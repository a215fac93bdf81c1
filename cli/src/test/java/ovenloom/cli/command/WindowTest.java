package ovenloom.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;

/** A while of a plan, as it is asked for. */
class WindowTest {

  private static final int DAY = 24 * 60;

  private static Event event(String zone) {
    return event(zone, "2026-10-10", "2026-10-11");
  }

  private static Event event(String zone, String day, String next) {
    return HandPlan.forProblem(
        """
            ovenloom: 1
            event: Supper
            guests: 8
            ZONE
            courses: [{name: supper, at: DAY 19:00}, {name: breakfast, at: NEXT 9:00}]
            kitchen: {ovens: [OVEN], vessels: {bowl: 1}}
            cooks: [{name: Host, hours: {on the day: 8:00-21:00}}]
            dishes: [{dish: Salad, course: supper, steps: [{do: dress, takes: 10 min, hands: throughout, in: bowl}]}]
            """
            .replace("ZONE", zone)
            .replace("DAY", day)
            .replace("NEXT", next)
            .replace("OVEN",
                "{name: oven, dial: 60 C to 260 C, heats: 180 C in 12 min, racks: {count: 2, size: 55 x 38 cm, clear: 15 cm}}"))
        .run("Salad/dress", HandPlan.at("18:00"))
        .plan()
        .event();
  }

  private static Asked<Stretch> asked(String at) {
    return new Window(at, null).of(event(""), InstantSource.system());
  }

  private static Asked<Stretch> anHourFrom(int minute) {
    return new Asked.For<>(new Stretch(minute, minute + 60));
  }

  /** 2026-10-10 is a Saturday. */
  @ParameterizedTest
  @CsvSource({"17:40, 0, 17:40", "Saturday 17:40, 0, 17:40", "sat 17:40, 0, 17:40",
      "on the day 17:40, 0, 17:40",
      "2026-10-10 17:40, 0, 17:40", "day before 17:40, -1, 17:40", "Friday 17:40, -1, 17:40",
      "Sunday 8:30, 1, 8:30", "Monday 17:40, -5, 17:40", "friday, -1, 0:00", "2 days before, -2, 0:00"})
  void a_time_is_said_in_many_ways(String words, int day, String time) {
    assertThat(asked(words)).isEqualTo(anHourFrom(day * DAY + HandPlan.at(time)));
  }

  @ParameterizedTest
  @CsvSource({"soon", "17:60", "Someday 17:40", "25:00"})
  void what_is_no_time_is_told_with_what_is(String words) {
    assertThat(asked(words)).isInstanceOfSatisfying(Asked.Wrong.class,
        wrong -> assertThat(wrong.lines().toString()).contains("\"" + words + "\" is no time",
            "\"day before 17:40\""));
  }

  @Test
  void without_a_time_it_begins_now_on_the_clock_of_the_kitchen() {
    Instant now = ZonedDateTime.of(2026, 10, 10, 16, 40, 30, 0, ZoneId.of("Europe/London")).toInstant();

    assertThat(new Window(null, Duration.ofMinutes(20)).of(event("zone: Europe/Paris"), () -> now))
        .isEqualTo(new Asked.For<>(new Stretch(HandPlan.at("17:40"), HandPlan.at("18:00"))));
  }

  /** The night of 2026-10-25 has a second 02:30, an hour after the first (IANA time zone database). */
  @ParameterizedTest
  @CsvSource({"2026-10-25T00:30:20Z, 2:30", "2026-10-25T01:30:20Z, 3:30", "2026-10-25T02:30:20Z, 4:30"})
  void now_is_the_second_half_past_two_when_it_is(Instant now, String sinceMidnight) {
    assertThat(new Window(null, null).of(event("zone: Europe/Berlin", "2026-10-25", "2026-10-26"), () -> now))
        .isEqualTo(anHourFrom(HandPlan.at(sinceMidnight)));
  }

  @Test
  void a_kitchen_in_no_zone_is_where_this_machine_is() {
    Instant now = LocalDateTime.of(2026, 10, 9, 17, 40).atZone(ZoneId.systemDefault()).toInstant();

    assertThat(new Window(null, null).of(event(""), () -> now))
        .isEqualTo(anHourFrom(HandPlan.at("17:40") - DAY));
  }

  @Test
  void seconds_count_as_the_minute_they_begin() {
    assertThat(new Window("17:40", Duration.ofSeconds(61)).of(event(""), InstantSource.system()))
        .isEqualTo(new Asked.For<>(new Stretch(HandPlan.at("17:40"), HandPlan.at("17:42"))));
  }
}
