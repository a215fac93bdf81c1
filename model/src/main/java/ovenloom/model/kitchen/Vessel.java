package ovenloom.model.kitchen;

import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Size;

/**
 * A kind of pan, pot, dish or plate, and how many of it there are.
 *
 * @param size outside, without which it can stand in no oven and takes no room on a shelf
 * @param burner the least burner it may stand on
 * @param wash minutes to wash all dirty pieces of it
 */
public record Vessel(
    String name, int count, @Nullable Size size, BurnerSize burner, int wash, Availability open) {

  /** Minutes of one cook to wash up where a file does not say. Common practice. */
  public static final int WASH_MINUTES = 5;

  public Vessel {
    if (count < 1 || wash < 1) {
      throw new IllegalArgumentException("\"" + name + "\" needs a count and a wash of at least 1");
    }
  }
}
