package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.sheet.Clock;
import ovenloom.model.measure.Stretch;

/** A stretch of time as it is drawn, from left to right. */
public record Window(Stretch when, Clock clock) {

  private static final int HOUR = 60;

  /** A line of the ruler. */
  public record Tick(int minute, String left, String time) {}

  /** How far to the right a minute is, in percent. */
  public String at(int minute) {
    return percent(minute - when.from());
  }

  /** How wide so much of a stretch is as can be seen, in percent. */
  public String width(Stretch stretch) {
    Stretch seen = when.shared(stretch);
    return percent(seen == null ? 0 : seen.minutes());
  }

  /** Where what can be seen of a stretch begins, in percent. */
  public String left(Stretch stretch) {
    return at(Math.max(when.from(), stretch.from()));
  }

  /** Where what can be seen of a stretch ends, in percent. */
  public String right(Stretch stretch) {
    return at(Math.min(when.to(), stretch.to()));
  }

  private String percent(int minutes) {
    return Math.round(100_000.0 * minutes / when.minutes()) / 1000.0 + "%";
  }

  /** Each full hour of the clock on the wall; each half of one where there are few. */
  public List<Tick> ticks() {
    int apart = when.minutes() > 6 * HOUR ? HOUR : HOUR / 2;
    List<Tick> ticks = new ArrayList<>();
    for (int minute = when.from(); minute < when.to(); minute++) {
      if (clock.calendar().at(minute).getMinute() % apart == 0) {
        ticks.add(new Tick(minute, at(minute), clock.column(minute)));
      }
    }
    return ticks;
  }

  /** {@code  from 18:05 to 18:40}, with the day of a time on another than its first. */
  String told(Stretch stretch) {
    return " from " + clock.time(stretch.from(), when.from()) + " to "
        + clock.time(stretch.to(), when.from());
  }

  /** A minute in ISO 8601. */
  public String iso(int minute) {
    return Days.iso(minute, clock.calendar());
  }
}
