package ovenloom.cli.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChangesTest {

  @ParameterizedTest
  @ValueSource(strings = {"Europe/Berlin", "Europe/Dublin", "America/Santiago", "Asia/Beirut", "Asia/Kolkata",
      "Australia/Lord_Howe", "America/Havana", "Africa/Casablanca", "UTC", "Etc/GMT+5"})
  void whoever_reads_it_knows_how_the_clocks_go_at_every_hour_of_a_year(String name) {
    ZoneId zone = ZoneId.of(name);
    Instant first = Instant.parse("2026-08-01T00:00:00Z");
    Instant last = Instant.parse("2027-08-01T00:00:00Z");

    VTimeZone card = new Changes(zone, first, last).card();

    for (Instant hour = first; hour.isBefore(last); hour = hour.plus(Duration.ofMinutes(30))) {
      assertThat(offset(card, hour)).as("%s in %s", hour, name).isEqualTo(zone.getRules().getOffset(hour));
    }
  }

  /** As RFC 5545 has it, 3.6.5: of the observances that have begun, the last. */
  private static ZoneOffset offset(VTimeZone card, Instant when) {
    return card.getObservances()
        .stream()
        .filter(each -> !onset(each).isAfter(when))
        .max(Comparator.comparing(ChangesTest::onset))
        .map(each -> each.<TzOffsetTo>getRequiredProperty("TZOFFSETTO").getOffset())
        .orElseThrow();
  }

  private static Instant onset(Observance observance) {
    LocalDateTime start = observance.<DtStart<LocalDateTime>>getRequiredProperty("DTSTART").getDate();
    return start.toInstant(observance.<TzOffsetFrom>getRequiredProperty("TZOFFSETFROM").getOffset());
  }

  @ParameterizedTest
  @CsvSource({"2026-10-24T12:00:00Z, 2026-10-25T12:00:00Z, 2",
      "2027-03-27T12:00:00Z, 2027-03-28T12:00:00Z, 2",
      "2026-12-24T12:00:00Z, 2026-12-25T12:00:00Z, 1"})
  void it_tells_of_no_more_changes_than_there_are_while_a_plan_lasts(Instant from, Instant to, int count) {
    VTimeZone card = new Changes(ZoneId.of("Europe/Berlin"), from, to).card();

    assertThat(card.getObservances()).hasSize(count);
  }
}
