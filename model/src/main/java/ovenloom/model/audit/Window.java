package ovenloom.model.audit;

import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Dial;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Need;

/** The settings that will do, in the mode the oven is in. */
record Window(Temperature from, Temperature to) {

  /** Null where what is written says nothing of the oven's mode. */
  static @Nullable Window of(Need.Stage stage, String mode, Oven oven) {
    Double shift = oven.converts(stage.mode(), mode);
    return shift == null ? null
        : new Window(stage.from().temperature().plusKelvins(shift),
            stage.to().temperature().plusKelvins(shift));
  }

  boolean holds(Setting mark, Dial dial) {
    return dial.within(from, to).contains(mark);
  }

  double kelvinsOutside(Setting mark) {
    return Math.max(from.kelvinsAbove(mark.temperature()), mark.temperature().kelvinsAbove(to));
  }
}
