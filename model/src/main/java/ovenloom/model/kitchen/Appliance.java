package ovenloom.model.kitchen;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Power;

/**
 * A kind of machine, and how many of it there are.
 *
 * @param places how many steps may use one of it at once
 * @param heats whether what goes through it is cooked: a kettle, a steamer, an urn
 * @param draws what it asks of its circuit while in use
 */
public record Appliance(
    String name, int count, int places, boolean heats, Power draws, @Nullable String circuit,
    Availability open) {

  public Appliance {
    if (count < 1 || places < 1) {
      throw new IllegalArgumentException("\"" + name + "\" needs a count and places of at least 1");
    }
  }

  /** How many steps may use it at once. */
  public int capacity() {
    return count * places;
  }
}
