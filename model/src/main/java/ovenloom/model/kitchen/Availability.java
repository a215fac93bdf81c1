package ovenloom.model.kitchen;

import java.util.List;
import ovenloom.model.measure.Stretch;

/**
 * When a thing can be used at all.
 *
 * @param hours the stretches in which it may be used; empty means always
 * @param taken what others have of it already
 */
public record Availability(List<Stretch> hours, List<Taken> taken) {

  /** Always there, all of it. */
  public static final Availability ALWAYS = new Availability(List.of(), List.of());

  public Availability {
    hours = List.copyOf(hours);
    taken = List.copyOf(taken);
  }

  /**
   * Some of it is somebody else's for a while.
   *
   * @param when the stretch
   * @param count how many; for a thing that is one thing (an oven, a shelf) always 1
   */
  public record Taken(Stretch when, int count) {
    public Taken {
      if (count < 1) {
        throw new IllegalArgumentException("taken count must be at least 1, was " + count);
      }
    }
  }
}
