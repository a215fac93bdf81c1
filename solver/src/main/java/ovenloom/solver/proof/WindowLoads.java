package ovenloom.solver.proof;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Run;

/**
 * Shows that there is no plan, where some stretch is too small for what must fall into it: work that must be done between two minutes,
 * over what there is of hands, burners, machines or racks in them. It takes milliseconds, and what it does not refute may still have no
 * plan.
 */
public final class WindowLoads {

  private WindowLoads() {}

  /** The clash that is off by the largest share; none where there may be a plan. */
  public static Optional<Clash> of(Event event) {
    return of(Extents.of(event));
  }

  /** The same of an event of which it is known where each step must lie. */
  public static Optional<Clash> of(Extents extents) {
    return Stream.concat(noTime(extents).stream(), loads(extents.laidOut().event(), extents))
        .max(Comparator.comparingDouble(WindowLoads::share));
  }

  /** A step that has to begin too late to end in time. */
  private static Optional<Clash> noTime(Extents extents) {
    return extents.runs()
        .stream()
        .filter(
            run -> extents.latest(run.index()) - extents.earliest(run.index()) < extents.least(run.index()))
        .map(run -> noTime(extents, run))
        .findFirst();
  }

  private static Clash noTime(Extents extents, Run run) {
    int from = extents.earliest(run.index());
    Stretch when = new Stretch(from, Math.max(from, extents.latest(run.index())));
    return new Clash(Clash.Kind.TIME, "time", when, extents.least(run.index()), when.minutes(), run.units());
  }

  private static Stream<Clash> loads(Event event, Extents extents) {
    return extents.isPossible()
        ? new Supplies(event, extents).all().stream().flatMap(supply -> worst(supply).stream())
        : Stream.empty();
  }

  private static double share(Clash clash) {
    return (double) clash.asked() / Math.max(1, clash.there());
  }

  private static Optional<Clash> worst(Supply supply) {
    int[] begins = minutes(supply, Task::earliest, task -> task.latest() - task.minutes());
    int[] ends = minutes(supply, Task::latest, task -> task.earliest() + task.minutes());
    Clash worst = null;
    for (int from : begins) {
      for (int to : ends) {
        long asked = from < to ? asked(supply.tasks(), from, to) : 0;
        long there = asked == 0 ? 0 : supply.there().between(from, to);
        if (asked > there) {
          Clash clash = new Clash(supply.kind(), supply.what(), new Stretch(from, to), asked, there,
              steps(supply.tasks(), from, to));
          worst = worst == null || share(clash) > share(worst) ? clash : worst;
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Where a stretch that asks for too much may begin or end. */
  private static int[] minutes(Supply supply, ToIntFunction<Task> one, ToIntFunction<Task> other) {
    return IntStream.concat(supply.tasks().stream().mapToInt(one), supply.tasks().stream().mapToInt(other))
        .sorted()
        .distinct()
        .toArray();
  }

  private static long asked(List<Task> tasks, int from, int to) {
    return tasks.stream().mapToLong(task -> task.least(from, to)).sum();
  }

  private static List<BatchStep> steps(List<Task> tasks, int from, int to) {
    return tasks.stream()
        .filter(task -> task.least(from, to) > 0)
        .sorted(Comparator.comparingLong((Task task) -> -task.least(from, to)))
        .map(Task::step)
        .distinct()
        .toList();
  }
}
