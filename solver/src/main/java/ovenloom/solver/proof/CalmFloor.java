package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Event;

/**
 * How busy the last hours and the day are at least, by hands alone: doors and washes are left out. Of the last two hours before a course
 * only so much is free of crowds as there are cooks beyond the first.
 */
final class CalmFloor {

  private static final int LAST_HANDS = 60;
  private static final int LAST_CROWD = 120;
  private static final int MINUTES_A_POINT = 20;
  private static final int DAY = 24 * 60;

  private final CpModel model;
  private final Event event;
  private final List<Stint> stints;

  private CalmFloor(Relaxation relaxation, List<Stint> stints) {
    model = relaxation.model();
    event = relaxation.work().event();
    this.stints = stints.stream().filter(Stint::counts).toList();
  }

  static LinearArgument of(Relaxation relaxation, List<Stint> stints) {
    CalmFloor floor = new CalmFloor(relaxation, stints);
    LinearExprBuilder points = LinearExpr.newBuilder().add(floor.minutes(floor.before(LAST_HANDS)));
    floor.before(LAST_CROWD).parts().forEach(window -> points.addTerm(floor.crowded(window), 2));
    return points.addTerm(floor.day(), 1).build();
  }

  private Stretches before(int minutes) {
    return new Stretches(event.dishes()
        .stream()
        .map(event::courseOf)
        .map(course -> new Stretch(course.at() - minutes, course.at()))
        .toList());
  }

  private IntVar crowded(Stretch window) {
    IntVar crowded = model.newIntVar(0, window.minutes(), "crowded");
    long free = IntStream.range(window.from(), window.to())
        .mapToLong(minute -> Math.max(0, atWork(minute) - 1))
        .sum();
    model.addLessOrEqual(
        LinearExpr.newBuilder().add(minutes(Stretches.of(window))).addTerm(crowded, -1), free);
    return crowded;
  }

  private long atWork(int minute) {
    return event.cooks().stream().filter(cook -> Capacity.isAtWork(cook, minute)).count();
  }

  private IntVar day() {
    IntVar points = model.newIntVar(0, (long) DAY * event.cooks().size(), "work on the day");
    LinearExpr over = LinearExpr.newBuilder()
        .addTerm(points, MINUTES_A_POINT)
        .addTerm(minutes(Stretches.of(new Stretch(0, DAY))), -1)
        .build();
    model.addGreaterOrEqual(over, 1 - MINUTES_A_POINT);
    return points;
  }

  /** Minutes of all hands that lie in some stretches. */
  private LinearArgument minutes(Stretches when) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    when.parts()
        .forEach(part -> stints
            .forEach(stint -> sum.addTerm(Overlap.of(model, stint, part), stint.hands().cooks())));
    return sum.build();
  }
}
