package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.plan.HandsOn;

/**
 * When someone is in the kitchen, at work or at a break.
 *
 * @param hours of any cook, but for errands
 * @param comings when somebody goes on an errand or is back
 */
record Attendance(Stretches hours, Set<Integer> comings) {

  static Attendance of(Case plan) {
    List<Stretch> hours = new ArrayList<>();
    for (Cook cook : plan.event().cooks()) {
      hours.addAll(new Stretches(cook.hours()).without(errands(plan, cook)).parts());
    }
    Set<Integer> comings = new HashSet<>();
    errands(plan).forEach(hands -> comings.addAll(List.of(hands.when().from(), hands.when().to())));
    return new Attendance(new Stretches(hours), comings);
  }

  /** When a cook is out of the house. */
  private static Stretches errands(Case plan, Cook cook) {
    return new Stretches(
        errands(plan).filter(hands -> hands.cooks().contains(cook.name())).map(HandsOn::when).toList());
  }

  private static Stream<HandsOn> errands(Case plan) {
    return plan.plan()
        .placements()
        .stream()
        .filter(run -> plan.steps(run).stream().anyMatch(each -> each.step().away()))
        .flatMap(run -> run.hands().stream());
  }

  /** Minutes from a moment to the nearest at which someone is there, 0 at the one; the minute that hours end counts. */
  OptionalInt away(int moment) {
    return comings.contains(moment) ? OptionalInt.of(0) : hours.parts()
        .stream()
        .mapToInt(part -> Math.max(0, Math.max(part.from() - moment, moment - part.to())))
        .min();
  }

  /** The minutes of a stretch at which nobody is there. */
  Stretches missing(Stretch when) {
    return Stretches.of(when).without(hours);
  }
}
