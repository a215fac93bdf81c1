package ovenloom.solver.exact;

import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;

/**
 * Cooks are at work from the beginning of what they do to its end, and do one thing at a time, where nothing is done in one breath: of those
 * that are alike no more are at it than there are.
 */
final class OneThingAtATime {

  private final Cp cp;

  /**
   * Of all tasks.
   *
   * @param alike by each cook that may be chosen, all that are like it
   */
  OneThingAtATime(Cp cp, Map<Cook, List<Cook>> alike, List<Task> tasks) {
    this.cp = cp;
    alike.forEach((cook, all) -> noMoreThanThereAre(cook, all.size(), tasks));
    everybody(alike, tasks);
  }

  private void noMoreThanThereAre(Cook cook, int all, List<Task> tasks) {
    CumulativeConstraint busy = cp.model().addCumulative(all);
    for (Task task : tasks) {
      Literal does = Objects.requireNonNull(task.by().get(cook));
      if (task.cooks() > 1) {
        throw new UnsupportedOperationException("several cooks at once");
      }
      busy.addDemand(cp.model().newOptionalFixedSizeIntervalVar(task.start(), task.minutes(), does, "does"),
          1);
    }
    away(busy, cook, all);
  }

  /** Says nothing new, but lets the solver see it without knowing who does what. */
  private void everybody(Map<Cook, List<Cook>> alike, List<Task> tasks) {
    CumulativeConstraint busy = cp.model().addCumulative(alike.values().stream().mapToInt(List::size).sum());
    for (Task task : tasks) {
      busy.addDemand(cp.model().newFixedSizeIntervalVar(task.start(), task.minutes(), "done"), 1);
    }
    alike.forEach((cook, all) -> away(busy, cook, all.size()));
  }

  private void away(CumulativeConstraint busy, Cook cook, int all) {
    Stretches free = new Stretches(cook.hours()).without(new Stretches(cook.breaks()));
    for (Stretch each : Stretches.of(new Stretch(cp.from(), cp.to())).without(free).parts()) {
      busy.addDemand(cp.model().newFixedInterval(each.from(), each.minutes(), "away"), all);
    }
  }
}
