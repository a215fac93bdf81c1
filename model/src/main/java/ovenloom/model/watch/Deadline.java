package ovenloom.model.watch;

import ovenloom.model.life.Track;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.CoolDown;

/**
 * A minute by which cooked food must have cooled.
 *
 * @param track the way it goes
 * @param span from the end of the heat to the next, or to its end
 * @param by the last minute that the limit gives it
 */
public record Deadline(CoolDown limit, Track track, Stretch span, int by) {

  /** The minute from which the limit counts, as predicted. */
  public int from() {
    return by - limit.minutes();
  }

  /** What it is at a minute. */
  public BatchStep step(int minute) {
    return track.at(minute).step();
  }

  /** How warm its warmest part is predicted to be then, C. */
  public double warmest(int minute) {
    return track.at(minute).warmest(minute);
  }
}
