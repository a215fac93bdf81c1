package ovenloom.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import net.fortuna.ical4j.model.TimeZoneUpdater;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;

class ZonedTest {

  @ParameterizedTest
  @CsvSource(nullValues = "none", value = {
      "none,             2026-10-25, 150, DTSTART:20261025T023000, DTEND:20261025T024500",
      "Europe/Berlin,    2026-10-25, 105, DTSTART:20261024T234500Z, DTEND:20261025T000000Z",
      "Europe/Berlin,    2026-10-25, 104, DTSTART;TZID=Europe/Berlin:20261025T014400, DTEND;TZID=Europe/Berlin:20261025T015900",
      "Europe/Berlin,    2026-10-25, 150, DTSTART:20261025T003000Z, DTEND:20261025T004500Z",
      "Europe/Berlin,    2026-10-25, 210, DTSTART:20261025T013000Z, DTEND:20261025T014500Z",
      "Europe/Berlin,    2026-10-25, 240, DTSTART;TZID=Europe/Berlin:20261025T030000, DTEND;TZID=Europe/Berlin:20261025T031500",
      "Europe/Berlin,    2027-03-28, 110, DTSTART;TZID=Europe/Berlin:20270328T015000, DTEND;TZID=Europe/Berlin:20270328T030500",
      "America/Santiago, 2026-09-06, -10, DTSTART;TZID=America/Santiago:20260905T235000, DTEND;TZID=America/Santiago:20260906T010500"})
  void a_quarter_of_an_hour_is_told_by_the_clock_unless_the_clock_shows_it_twice(String zone, LocalDate day,
      int minute, String begin, String end) {
    var zoned = new Zoned(new Calendar(day, zone == null ? null : ZoneId.of(zone)));

    assertThat(zoned.stretch(new Stretch(minute, minute + 15))).extracting(each -> each.toString().strip())
        .containsExactly(begin, end);
  }

  /** The library has zones of its own, and they are older than Java's. */
  @Test
  void a_zone_is_called_as_java_calls_it_whichever_it_is() {
    List<String> zones = ZoneId.getAvailableZoneIds()
        .stream()
        .filter(each -> !each.startsWith("ical4j"))
        .toList();

    assertThat(zones).hasSizeGreaterThan(500).allSatisfy(zone -> {
      var zoned = new Zoned(new Calendar(LocalDate.parse("2027-01-15"), ZoneId.of(zone)));
      assertThat(zoned.stretch(new Stretch(1080, 1095)).getFirst().toString().strip())
          .isEqualTo("DTSTART;TZID=" + zone + ":20270115T180000");
    });
  }

  @Test
  void nobody_is_asked_over_a_network_how_clocks_go() {
    assertThat(new TimeZoneUpdater().isEnabled()).isFalse();
  }
}
