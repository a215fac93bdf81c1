package ovenloom.cli.calendar;

import java.time.ZoneId;
import java.util.List;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.parameter.TzId;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;

/** Minutes as a calendar file has them: by the clock in the event's zone, or by whatever clock hangs there where it has none. */
record Zoned(Calendar calendar) {

  /**
   * Its beginning and its end. A time that the clock shows twice means the first of the two (RFC 5545, 3.3.5), which not all programs
   * know: it is told in UTC.
   */
  List<Property> stretch(Stretch when) {
    if (comesTwice(when.from()) || comesTwice(when.to())) {
      return List.of(new DtStart<>(calendar.instant(when.from())), new DtEnd<>(calendar.instant(when.to())));
    }
    return List.of(new DtStart<>(here(), calendar.at(when.from())),
        new DtEnd<>(here(), calendar.at(when.to())));
  }

  private ParameterList here() {
    ZoneId zone = calendar.zone();
    return zone == null ? new ParameterList() : new ParameterList(List.of(new TzId(zone.getId())));
  }

  private boolean comesTwice(int minute) {
    ZoneId zone = calendar.zone();
    return zone != null && zone.getRules().getValidOffsets(calendar.at(minute)).size() > 1;
  }
}
