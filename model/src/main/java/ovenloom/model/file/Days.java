package ovenloom.model.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Parsed;

/** Days and times as people write them: "2 days before", "on the day", 2026-10-10, 18:30, 9:00-13:00. */
public record Days(Calendar calendar) {

  /** How many days from the first course anything may be. */
  static final int FARTHEST = 1000;

  private static final String DAY = "a day like \"2 days before\", \"day before\", \"on the day\" or \"2026-10-10\"";
  private static final String DATE_AND_TIME = "a date and a time like \"2026-10-10 18:30\"";
  private static final String STRETCH = "a time from and a time to like \"9:00-13:00\"";

  private static final Pattern COUNTED = Pattern.compile("([0-9]{1,3}) days? (before|after)");
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-9]{2})");
  private static final Pattern FROM_TO = Pattern
      .compile("([0-9:]+)\\s*(?:[-\u2010-\u2015\u2212]|to)\\s*([0-9:]+)");
  private static final int MINUTES_A_DAY = 24 * 60;

  /** A stretch of one day, in minutes of its clock; one that ends the next morning ends after 24:00. */
  record Clock(int from, int to) {}

  /** A day in words that count from the day of the event, or a date. */
  Parsed<LocalDate> day(String text) {
    String words = text.strip().toLowerCase(Locale.ROOT);
    LocalDate day = switch (words) {
      case "on the day", "the day" -> calendar.day();
      case "day before", "the day before" -> calendar.day().minusDays(1);
      case "day after", "the day after" -> calendar.day().plusDays(1);
      default -> counted(words);
    };
    LocalDate date = day == null ? date(words) : day;
    if (date != null && Math.abs(ChronoUnit.DAYS.between(calendar.day(), date)) > FARTHEST) {
      return Scalars.bad(text, "a day at most " + FARTHEST + " days from the first course");
    }
    if (date != null) {
      return new Parsed.Good<>(date);
    }
    String nearest = Nearest.to(words, List.of("on the day", "day before", "2 days before", "day after"));
    return new Parsed.Bad<>(DAY, nearest == null ? List.of() : List.of(nearest), 0, text.length());
  }

  private @Nullable LocalDate counted(String words) {
    Matcher counted = COUNTED.matcher(words);
    if (!counted.matches()) {
      return null;
    }
    int days = Integer.parseInt(counted.group(1));
    return calendar.day().plusDays(counted.group(2).equals("before") ? -days : days);
  }

  private static @Nullable LocalDate date(String text) {
    if (!DATE.matcher(text).matches()) {
      return null;
    }
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      return null;
    }
  }

  /** A date and a time of day. */
  static Parsed<LocalDateTime> moment(String text) {
    String[] parts = text.strip().split("\\s+|[Tt](?=[0-9])", 2);
    LocalDate date = date(parts[0]);
    Integer clock = parts.length < 2 ? null : clock(parts[1]);
    return date == null || clock == null || clock == MINUTES_A_DAY ? Scalars.bad(text, DATE_AND_TIME)
        : new Parsed.Good<>(LocalDateTime.of(date, LocalTime.ofSecondOfDay(clock * 60L)));
  }

  /** The minute a day begins, or a time on it: "3 days before", "day before 14:00". */
  public Parsed<Integer> minute(String text) {
    String words = text.strip();
    int space = words.lastIndexOf(' ');
    Integer clock = space < 0 ? null : clock(words.substring(space + 1));
    Parsed<LocalDate> day = day(clock == null ? words : words.substring(0, space));
    int minutes = clock == null ? 0 : clock;
    return Scalars.checked(day, text, date -> minuteOf(date, minutes), DAY);
  }

  /** A stretch of a day; one that ends before it begins ends the next morning. */
  static Parsed<Clock> stretch(String text) {
    Matcher both = FROM_TO.matcher(text.strip());
    Integer from = both.matches() ? clock(both.group(1)) : null;
    Integer to = both.matches() ? clock(both.group(2)) : null;
    if (from == null || to == null || from.equals(to) || from == MINUTES_A_DAY) {
      return Scalars.bad(text, STRETCH);
    }
    return new Parsed.Good<>(new Clock(from, to < from ? to + MINUTES_A_DAY : to));
  }

  /** Minutes elapsed at a time of a day, which may be past 24:00. */
  int minuteOf(LocalDate day, int clock) {
    LocalDateTime begins = day.atStartOfDay();
    return calendar.minuteOf(begins.plusMinutes(clock));
  }

  /** The place the clock on the wall belongs to, by its name in the tz database. */
  static Parsed<ZoneId> zone(String text) {
    if (ZoneId.getAvailableZoneIds().contains(text)) {
      return new Parsed.Good<>(ZoneId.of(text));
    }
    String nearest = Nearest.to(text, ZoneId.getAvailableZoneIds().stream().sorted().toList());
    return new Parsed.Bad<>("a time zone like \"Europe/Paris\"",
        nearest == null ? List.of() : List.of(nearest), 0,
        text.length());
  }

  private static @Nullable Integer clock(String text) {
    Matcher clock = CLOCK.matcher(text.strip());
    if (!clock.matches()) {
      return null;
    }
    int minutes = Integer.parseInt(clock.group(1)) * 60 + Integer.parseInt(clock.group(2));
    boolean real = minutes <= MINUTES_A_DAY && Integer.parseInt(clock.group(2)) < 60;
    return real ? minutes : null;
  }
}
