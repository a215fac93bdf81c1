package ovenloom.cli.page;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.cli.sheet.Act;
import ovenloom.cli.sheet.Clock;
import ovenloom.cli.sheet.View.OfCook;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Calendar;
import ovenloom.model.menu.Event;

/** The run sheet, day by day. */
final class Days {

  private Days() {}

  static List<Day> of(List<Act> acts, Event event) {
    Calendar calendar = event.calendar();
    Clock clock = new Clock(calendar);
    IdentityHashMap<Act, List<String>> whose = whose(acts, event);
    Map<LocalDate, List<Ticked>> days = new LinkedHashMap<>();
    for (int i = 0; i < acts.size(); i++) {
      Act act = acts.get(i);
      days.computeIfAbsent(clock.day(act.at()), day -> new ArrayList<>())
          .add(new Ticked("act-" + (i + 1), iso(act.at(), calendar), clock.column(act.at()), act,
              whose.getOrDefault(act, List.of())));
    }
    List<Day> all = new ArrayList<>();
    days.forEach((day, lines) -> all.add(new Day(clock.heading(day), lines)));
    return all;
  }

  /** Which cooks see an act on a sheet of their own; nobody has one where there is but one cook. */
  private static IdentityHashMap<Act, List<String>> whose(List<Act> acts, Event event) {
    IdentityHashMap<Act, List<String>> whose = new IdentityHashMap<>();
    if (event.cooks().size() > 1) {
      for (Cook cook : event.cooks()) {
        new OfCook(cook.name()).of(acts)
            .forEach(act -> whose.computeIfAbsent(act, none -> new ArrayList<>()).add(cook.name()));
      }
    }
    return whose;
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
