package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.measure.TemperatureUnit;
import ovenloom.model.menu.Need;

/** What an oven's dial can do: its settings by number, and a written window as marks on it. */
final class OvenDial {

  private static final double FAN_IS_COOLER_BY = 20;
  private static final double FAN_IS_COOLER_BY_IN_FAHRENHEIT = 25 / 1.8;

  private final Oven oven;
  private final List<Setting> marks;

  OvenDial(Oven oven) {
    this.oven = oven;
    marks = oven.dial().marks();
  }

  /** The number of a mark in a mode. */
  int setting(Setting mark, String mode) {
    return oven.modes().indexOf(mode) * marks.size() + marks.indexOf(mark);
  }

  /** Minutes from setting to setting. */
  int[][] changes() {
    int all = marks.size() * oven.modes().size();
    int[][] changes = new int[all][all];
    for (int from = 0; from < all; from++) {
      for (int to = 0; to < all; to++) {
        changes[from][to] = oven.warmth().minutes(temperature(from), temperature(to));
      }
    }
    return changes;
  }

  /** Minutes from room temperature to each setting. */
  int[] fromRoom() {
    int[] minutes = new int[marks.size() * oven.modes().size()];
    for (int setting = 0; setting < minutes.length; setting++) {
      minutes[setting] = oven.warmth().minutes(oven.warmth().room(), temperature(setting));
    }
    return minutes;
  }

  private Temperature temperature(int setting) {
    return marks.get(setting % marks.size()).temperature();
  }

  /** The mark nearest to what was written for a stage, in a mode; absent where its window has none. */
  @Nullable
  Setting written(Need.Stage stage, String mode) {
    List<Setting> window = window(stage, mode);
    Double shift = shift(stage.mode(), mode);
    if (window.isEmpty() || shift == null) {
      return null;
    }
    Setting nearest = oven.dial().nearest(stage.written().temperature().plusKelvins(shift));
    return window.contains(nearest) ? nearest : window.getFirst();
  }

  /** The marks inside a stage's window, in a mode; none where the modes do not convert. */
  List<Setting> window(Need.Stage stage, String mode) {
    Double shift = shift(stage.mode(), mode);
    if (shift == null) {
      return List.of();
    }
    Temperature from = stage.from().temperature().plusKelvins(shift);
    Temperature to = stage.to().temperature().plusKelvins(shift);
    return new ArrayList<>(oven.dial().within(from, to));
  }

  /** Kelvins to add to what was written for one mode, to run it in another; absent where that cannot be. */
  private @Nullable Double shift(String written, String mode) {
    if (written.equals(mode)) {
      return 0.0;
    }
    double fan = oven.dial().unit() == TemperatureUnit.FAHRENHEIT
        ? FAN_IS_COOLER_BY_IN_FAHRENHEIT
        : FAN_IS_COOLER_BY;
    if (written.equals(Oven.STILL) && mode.equals(Oven.FAN)) {
      return -fan;
    }
    return written.equals(Oven.FAN) && mode.equals(Oven.STILL) ? fan : null;
  }

  /** Kelvins between a mark and the one nearest to what was written. */
  double off(Need.Stage stage, String mode, Setting mark) {
    Double shift = shift(stage.mode(), mode);
    Setting nearest = oven.dial()
        .nearest(stage.written().temperature().plusKelvins(shift == null ? 0 : shift));
    return Math.abs(mark.temperature().kelvinsAbove(nearest.temperature()));
  }
}
