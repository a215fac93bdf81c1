package ovenloom.model.measure;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * Turns the clock on the wall into minutes elapsed since the day of the event began, and back.
 * Without a zone every day has 24 hours and the machine's own zone is never read. With one,
 * elapsed minutes run on over a clock change: the night the clocks go back is an hour longer.
 *
 * <p>A time the clocks skip is read as if they had not been put forward yet: 02:30 in a night that
 * goes from 02:00 to 03:00 is the minute that clock shows as 03:30. A time that comes twice is the
 * first of the two. Where the midnight that would begin the day is itself skipped, minute 0 is the
 * first moment of that day.
 *
 * @param day the day of the event; minute 0 is its beginning
 * @param zone where the event is, or null when that does not matter
 */
public record Calendar(LocalDate day, @Nullable ZoneId zone) {

  /**
   * Whole minutes from the beginning of the day to this time, negative before it; seconds are
   * left off.
   *
   * @throws ArithmeticException for a time some four thousand years away, past the end of {@code int}
   */
  public int minuteOf(LocalDateTime time) {
    return minuteOf(time.atZone(place()).toInstant());
  }

  /** The same of a moment itself, the second of two that the clock shows alike too; without a zone, as if in UTC. */
  public int minuteOf(Instant moment) {
    long seconds = moment.getEpochSecond() - zero().getEpochSecond();
    return Math.toIntExact(Math.floorDiv(seconds, 60));
  }

  /** What the clock on the wall shows so many minutes after the beginning of the day. */
  public LocalDateTime at(int minute) {
    return LocalDateTime.ofInstant(instant(minute), place());
  }

  /** The moment itself, which tells apart two that the clock shows alike; without a zone, as if in UTC. */
  public Instant instant(int minute) {
    return zero().plus(minute, ChronoUnit.MINUTES);
  }

  private Instant zero() {
    return day.atStartOfDay(place()).toInstant();
  }

  private ZoneId place() {
    return zone == null ? ZoneOffset.UTC : zone;
  }
}
