package ovenloom.model.file;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Stretch;

/** Writes hours by day: a stretch over midnight in parts, which reading joins again. */
record HoursWriter(Calendar calendar) {

  private static final int DAYS_IN_WORDS = 14;

  /** Its hours and what is taken, unless it is always there. */
  void say(Draft.Card card, Availability open) {
    if (!open.hours().isEmpty()) {
      card.say("hours", hours(open.hours()));
    }
    if (!open.taken().isEmpty()) {
      Map<LocalDate, List<Draft>> byDay = new LinkedHashMap<>();
      open.taken()
          .forEach(taken -> parts(taken.when()).forEach((day, clocks) -> clocks.forEach(
              clock -> byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(taken(clock, taken.count())))));
      card.say("taken", byDay(byDay));
    }
  }

  Draft hours(List<Stretch> stretches) {
    Map<LocalDate, List<Draft>> byDay = new LinkedHashMap<>();
    stretches.forEach(stretch -> parts(stretch).forEach((day, clocks) -> clocks
        .forEach(clock -> byDay.computeIfAbsent(day, d -> new ArrayList<>()).add(new Draft.Text(clock)))));
    return byDay(byDay);
  }

  /** A date and a time. */
  String moment(int minute) {
    LocalDateTime at = calendar.at(minute);
    return at.toLocalDate() + " " + at.toLocalTime();
  }

  private static Draft taken(String clock, int count) {
    return count == 1 ? new Draft.Text(clock)
        : new Draft.Card().say("when", clock).say("count", Integer.toString(count));
  }

  private Draft byDay(Map<LocalDate, List<Draft>> byDay) {
    Draft.Card card = new Draft.Card();
    byDay.forEach(
        (day, all) -> card.say(called(day), all.size() == 1 ? all.getFirst() : new Draft.Items(all)));
    return card;
  }

  private Map<LocalDate, List<String>> parts(Stretch stretch) {
    LocalDateTime from = calendar.at(stretch.from());
    LocalDateTime to = calendar.at(stretch.to());
    Map<LocalDate, List<String>> parts = new LinkedHashMap<>();
    while (from.toLocalDate().isBefore(to.toLocalDate())
        && !to.equals(from.toLocalDate().plusDays(1).atStartOfDay())) {
      boolean overNight = ChronoUnit.MINUTES.between(from, to) < 24 * 60;
      if (overNight) {
        break;
      }
      add(parts, from, "24:00");
      from = from.toLocalDate().plusDays(1).atStartOfDay();
    }
    boolean midnight = to.toLocalTime().equals(LocalTime.MIDNIGHT);
    add(parts, from, midnight ? "24:00" : to.toLocalTime().toString());
    return parts;
  }

  private static void add(Map<LocalDate, List<String>> parts, LocalDateTime from, String to) {
    parts.computeIfAbsent(from.toLocalDate(), d -> new ArrayList<>()).add(from.toLocalTime() + "-" + to);
  }

  private String called(LocalDate day) {
    long before = ChronoUnit.DAYS.between(day, calendar.day());
    if (before == 0) {
      return "on the day";
    }
    if (before == 1) {
      return "day before";
    }
    return before > 1 && before <= DAYS_IN_WORDS ? before + " days before" : day.toString();
  }
}
