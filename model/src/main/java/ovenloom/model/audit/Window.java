package ovenloom.model.audit;

import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Dial;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Need;

/** The settings that will do, in the mode the oven is in. */
record Window(Temperature from, Temperature to) {

  private static final double CELSIUS = 20;
  private static final double FAHRENHEIT = 25 / 1.8;

  /** Null where what is written says nothing of the oven's mode. */
  static @Nullable Window of(Need.Stage stage, String mode, Dial dial) {
    Double shift = shift(stage.mode(), mode, dial);
    return shift == null ? null
        : new Window(stage.from().temperature().plusKelvins(shift),
            stage.to().temperature().plusKelvins(shift));
  }

  private static @Nullable Double shift(String written, String mode, Dial dial) {
    double fan = switch (dial.unit()) {
      case CELSIUS, GAS -> CELSIUS;
      case FAHRENHEIT -> FAHRENHEIT;
    };
    if (written.equals(mode)) {
      return 0.0;
    }
    if (written.equals(Oven.STILL) && mode.equals(Oven.FAN)) {
      return -fan;
    }
    return written.equals(Oven.FAN) && mode.equals(Oven.STILL) ? fan : null;
  }

  boolean holds(Setting mark, Dial dial) {
    return dial.within(from, to).contains(mark);
  }

  double kelvinsOutside(Setting mark) {
    return Math.max(from.kelvinsAbove(mark.temperature()), mark.temperature().kelvinsAbove(to));
  }
}
