package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
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

  /** The temperature of each setting. */
  Temperature[] temperatures() {
    Temperature[] all = new Temperature[marks.size() * oven.modes().size()];
    Arrays.setAll(all, setting -> marks.get(setting % marks.size()).temperature());
    return all;
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
