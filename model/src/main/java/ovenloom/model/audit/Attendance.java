package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/**
 * When someone is in the kitchen, at work or at a break.
 *
 * @param hours of any cook, but for errands
 */
record Attendance(Stretches hours) {

  static Attendance of(Plan plan) {
    List<Stretch> hours = new ArrayList<>();
    for (Cook cook : plan.event().cooks()) {
      hours.addAll(new Stretches(cook.hours()).without(errands(plan, cook)).parts());
    }
    return new Attendance(new Stretches(hours));
  }

  /** When a cook is out of the house. */
  private static Stretches errands(Plan plan, Cook cook) {
    return new Stretches(plan.placements()
        .stream()
        .filter(run -> isAway(plan.event(), run))
        .flatMap(run -> run.hands().stream())
        .filter(hands -> hands.cooks().contains(cook.name()))
        .map(HandsOn::when)
        .toList());
  }

  private static boolean isAway(Event event, Placement run) {
    Dish dish = event.dish(run.dish());
    Step step = dish == null ? null : dish.step(run.step());
    return step != null && step.away();
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
