package ovenloom.solver.proof;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Fill;
import ovenloom.solver.place.Runs;

/**
 * How many sittings there are on the days before at least: one for each stretch of somebody's hours, with an hour in which nobody is there
 * before it, in which a piece of work of five minutes begins. And a wash each time that all vessels of a kind have been filled.
 */
final class SessionsFloor {

  private static final int POINTS_A_SITTING = 10;
  private static final int PAUSE = 60;
  private static final int HARDLY_WORK = 5;

  private SessionsFloor() {}

  static LinearArgument of(Relaxation relaxation, List<Stint> stints) {
    Event event = relaxation.work().event();
    LinearExprBuilder points = LinearExpr.newBuilder().add(washes(event));
    List<Stint> work = stints.stream()
        .filter(stint -> stint.counts() && stint.minutes() >= HARDLY_WORK)
        .toList();
    for (Stretch shift : shifts(event)) {
      points.addTerm(isWorked(relaxation.model(), shift, work), POINTS_A_SITTING);
    }
    return points.build();
  }

  private static BoolVar isWorked(CpModel model, Stretch shift, List<Stint> work) {
    BoolVar worked = model.newBoolVar("sitting");
    Domain elsewhere = Domain.fromFlatIntervals(
        new long[]{Integer.MIN_VALUE, shift.from() - 1, shift.to(), Integer.MAX_VALUE});
    for (Stint stint : work) {
      if (stint.first() < shift.to() && stint.last() >= shift.from()) {
        model.addLinearExpressionInDomain(stint.from(), elsewhere).onlyEnforceIf(worked.not());
      }
    }
    return worked;
  }

  /** Hours of anybody on the days before, those with less than a pause between them joined; the last ends with the day before. */
  private static List<Stretch> shifts(Event event) {
    Stretches hours = Stretches
        .any(event.cooks()
            .stream()
            .map(cook -> new Stretches(cook.hours()).without(new Stretches(cook.breaks())))
            .toList());
    List<Stretch> shifts = new ArrayList<>();
    for (Stretch each : hours.parts()) {
      boolean isJoined = !shifts.isEmpty() && each.from() - shifts.getLast().to() < PAUSE;
      shifts.add(isJoined ? new Stretch(shifts.removeLast().from(), each.to()) : each);
    }
    return shifts.stream()
        .filter(shift -> shift.from() < 0)
        .map(shift -> new Stretch(shift.from(), Math.min(shift.to(), 1 - HARDLY_WORK)))
        .filter(shift -> shift.minutes() > 0)
        .toList();
  }

  private static long washes(Event event) {
    Map<Integer, Integer> filled = new TreeMap<>();
    for (Fill fill : Runs.of(event).fillings()) {
      filled.merge(fill.vessel(), fill.count(), Integer::sum);
    }
    long washes = 0;
    for (Map.Entry<Integer, Integer> each : filled.entrySet()) {
      Vessel vessel = event.kitchen().vessels().get(each.getKey());
      washes += Math.max(0, Math.ceilDiv(each.getValue(), vessel.count()) - 1);
    }
    return washes;
  }
}
