package ovenloom.cli.sheet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import ovenloom.model.measure.Calendar;

/** Minutes as the clock on the wall and the calendar beside it show them. */
public record Clock(Calendar calendar) {

  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE", Locale.ENGLISH);
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy",
      Locale.ENGLISH);
  private static final List<String> NUMBERS = List.of(
      "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  public LocalDate day(int minute) {
    return calendar.at(minute).toLocalDate();
  }

  /** {@code 18:05}; the end of a day is {@code midnight}. */
  public String time(int minute) {
    String time = TIME.format(calendar.at(minute));
    return time.equals("00:00") ? "midnight" : time;
  }

  /** For the column of times, where {@code 00:00} begins a day. */
  public String column(int minute) {
    return TIME.format(calendar.at(minute));
  }

  /** {@code 18:05}, or with its day where that is another than now's: {@code Friday 17:00}. */
  public String time(int minute, int now) {
    LocalDateTime then = calendar.at(minute);
    long days = ChronoUnit.DAYS.between(day(now), then.toLocalDate());
    boolean thisNight = days == 1 && time(minute).equals("midnight");
    if (days == 0 || thisNight) {
      return time(minute);
    }
    return (days < 7 ? WEEKDAY : DAY).format(then) + " " + TIME.format(then);
  }

  /** {@code Saturday 10 October 2026}. */
  public String date(int minute) {
    return DATE.format(calendar.at(minute));
  }

  /** {@code Saturday 10 October}. */
  public String dayAndMonth(int minute) {
    return DAY.format(day(minute));
  }

  /** {@code Thursday 8 October, two days before}. */
  public String heading(LocalDate day) {
    return DAY.format(day) + ", " + countdown(ChronoUnit.DAYS.between(calendar.day(), day));
  }

  private static String countdown(long days) {
    if (days == 0) {
      return "on the day";
    }
    String side = days < 0 ? "before" : "after";
    long count = Math.abs(days);
    return count == 1 ? "the day " + side : number(count) + " days " + side;
  }

  private static String number(long count) {
    return count < NUMBERS.size() ? NUMBERS.get((int) count) : Long.toString(count);
  }
}
