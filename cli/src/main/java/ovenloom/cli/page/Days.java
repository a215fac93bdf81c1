package ovenloom.cli.page;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.Clock;
import ovenloom.model.measure.Calendar;

/** The run sheet, day by day. */
final class Days {

  private Days() {}

  static List<Day> of(List<Act> acts, Calendar calendar) {
    Clock clock = new Clock(calendar);
    Map<LocalDate, List<Ticked>> days = new LinkedHashMap<>();
    for (int i = 0; i < acts.size(); i++) {
      Act act = acts.get(i);
      days.computeIfAbsent(clock.day(act.at()), day -> new ArrayList<>())
          .add(new Ticked("act-" + (i + 1), iso(act.at(), calendar), clock.column(act.at()), act));
    }
    List<Day> all = new ArrayList<>();
    days.forEach((day, lines) -> all.add(new Day(clock.heading(day), lines)));
    return all;
  }

  static String iso(int minute, Calendar calendar) {
    ZoneId zone = calendar.zone();
    if (zone == null) {
      return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(calendar.at(minute));
    }
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
        calendar.day().atStartOfDay(zone).plusMinutes(minute).toOffsetDateTime());
  }
}
