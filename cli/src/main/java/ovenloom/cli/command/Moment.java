package ovenloom.cli.command;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.model.file.Days;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Parsed;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;

/** A time as one says it: {@code 17:40}, {@code Saturday 17:40}, {@code day before 17:40}, {@code 2026-10-10 17:40}. */
record Moment(String words) {

  private static final Pattern TIME_ALONE = Pattern.compile("[0-9:]+");
  private static final Pattern WEEKDAY = Pattern.compile("(?:on )?(\\p{L}{3,9})( [0-9:]+)?");

  /**
   * Its minute.
   *
   * @param day that of a time without one
   */
  Parsed<Integer> minute(Event event, LocalDate day) {
    String said = words.strip();
    if (TIME_ALONE.matcher(said).matches()) {
      return new Days(event.calendar()).minute(day + " " + said);
    }
    Matcher weekday = WEEKDAY.matcher(said);
    DayOfWeek named = weekday.matches() ? named(weekday.group(1)) : null;
    return new Days(event.calendar()).minute(named == null ? said
        : last(event, named) + (weekday.group(2) == null ? "" : weekday.group(2)));
  }

  private static @Nullable DayOfWeek named(String word) {
    for (DayOfWeek each : DayOfWeek.values()) {
      if (word.equalsIgnoreCase(each.name())
          || word.equalsIgnoreCase(each.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))) {
        return each;
      }
    }
    return null;
  }

  /** The last of that name that is not after the last course. */
  private static LocalDate last(Event event, DayOfWeek named) {
    Calendar calendar = event.calendar();
    int end = event.courses().stream().mapToInt(Course::at).max().orElse(0);
    return calendar.at(end).toLocalDate().with(TemporalAdjusters.previousOrSame(named));
  }
}
