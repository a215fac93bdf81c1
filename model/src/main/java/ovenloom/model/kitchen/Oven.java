package ovenloom.model.kitchen;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Setting;

/**
 * An oven: one dial, some racks, and the time it takes to warm and to cool.
 *
 * @param modes names of what it can do, {@link #STILL} and {@link #FAN} among them; never empty
 * @param hold the mark at which food may wait in it
 * @param racks from the bottom up
 * @param heating power while it warms; also what it asks of its circuit whenever it is on
 * @param holding power while it is at temperature
 * @param circuit the circuit it hangs on, if that is limited
 */
public record Oven(
    String name,
    Dial dial,
    List<String> modes,
    Warmth warmth,
    Setting hold,
    List<Rack> racks,
    Power heating,
    Power holding,
    @Nullable String circuit,
    Availability open) {

  /** Heat from above and below, no fan. */
  public static final String STILL = "still";

  /** Hot air moved by a fan. */
  public static final String FAN = "fan";

  /** Kelvins by which a fan bakes hotter. Common practice; on a dial in Fahrenheit it is 25 F. */
  private static final double FAN_IS_HOTTER_BY = 20;
  private static final double FAN_IS_HOTTER_BY_ON_A_FAHRENHEIT_DIAL = Dial.FAHRENHEIT_STEP / 1.8;

  public Oven {
    modes = List.copyOf(modes);
    racks = List.copyOf(racks);
    if (modes.isEmpty() || racks.isEmpty()) {
      throw new IllegalArgumentException("oven \"" + name + "\" needs a mode and a rack");
    }
  }

  /**
   * Kelvins to add to a setting that is written for one mode, to bake in another: less with the fan, more without.
   *
   * @return null where what is written says nothing of the other mode
   */
  public @Nullable Double converts(String written, String mode) {
    if (written.equals(mode)) {
      return 0.0;
    }
    double fan = switch (dial.unit()) {
      case CELSIUS, GAS -> FAN_IS_HOTTER_BY;
      case FAHRENHEIT -> FAN_IS_HOTTER_BY_ON_A_FAHRENHEIT_DIAL;
    };
    if (written.equals(STILL) && mode.equals(FAN)) {
      return -fan;
    }
    return written.equals(FAN) && mode.equals(STILL) ? fan : null;
  }

  /**
   * Whether a rack is one the level means: one rack serves all; of two, low is the first, high the second, middle
   * either; of more, the lowest, the highest, the rest.
   *
   * @param rack counted from the bottom, from 0
   */
  public boolean isAt(int rack, Level level) {
    int top = racks.size() - 1;
    return switch (level) {
      case LOW -> rack == 0;
      case HIGH -> rack == top;
      case MIDDLE -> top < 2 || (rack > 0 && rack < top);
    };
  }
}
