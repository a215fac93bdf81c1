package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Event;

/**
 * When someone is in the kitchen, at work or at a break.
 *
 * @param hours of any cook
 */
record Attendance(Stretches hours) {

  static Attendance at(Event event) {
    List<Stretch> hours = new ArrayList<>();
    for (Cook cook : event.cooks()) {
      hours.addAll(cook.hours());
    }
    return new Attendance(new Stretches(hours));
  }

  /** Minutes from a moment to the nearest at which someone is there, 0 at the one; the minute that hours end counts. */
  OptionalInt away(int moment) {
    return hours.parts()
        .stream()
        .mapToInt(part -> Math.max(0, Math.max(part.from() - moment, moment - part.to())))
        .min();
  }

  /** The minutes of a stretch at which nobody is there. */
  Stretches missing(Stretch when) {
    return Stretches.of(when).without(hours);
  }
}
