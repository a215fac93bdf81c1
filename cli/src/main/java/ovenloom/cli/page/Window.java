package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

  private String percent(int minutes) {
    return String.format(Locale.ROOT, "%.3f%%", 100.0 * minutes / when.minutes());
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

  /** A minute in ISO 8601. */
  public String iso(int minute) {
    return Days.iso(minute, clock.calendar());
  }
}
