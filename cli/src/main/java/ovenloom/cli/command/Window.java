package ovenloom.cli.command;

import java.time.Duration;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Calendar;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;

/**
 * A while of a plan, as it was asked for.
 *
 * @param at when it begins; absent for the present moment
 * @param next how long it is; absent for an hour
 */
record Window(@Nullable String at, @Nullable Duration next) {

  private static final Duration AN_HOUR = Duration.ofHours(1);

  Asked<Stretch> of(Event event, InstantSource clock) {
    if (at == null) {
      return new Asked.For<>(from(now(event.calendar(), clock)));
    }
    return switch (new Moment(at).minute(event, event.calendar().day())) {
      case Parsed.Good<Integer>(Integer minute) -> new Asked.For<>(from(minute));
      case Parsed.Bad<Integer> bad -> new Asked.Wrong<>(List.of("\"" + at + "\" is no time",
          "Say 17:40, for the day of the event, or \"Saturday 17:40\", \"day before 17:40\", \"2026-10-10 17:40\"."));
    };
  }

  /** On the clock of the kitchen; this machine's, where the kitchen is in no zone. */
  private static int now(Calendar calendar, InstantSource clock) {
    return calendar.zone() == null
        ? calendar.minuteOf(LocalDateTime.ofInstant(clock.instant(), ZoneId.systemDefault()))
        : calendar.minuteOf(clock.instant());
  }

  private Stretch from(int minute) {
    Duration length = next == null ? AN_HOUR : next;
    return new Stretch(minute, minute + Math.toIntExact(length.plusSeconds(59).toMinutes()));
  }
}
