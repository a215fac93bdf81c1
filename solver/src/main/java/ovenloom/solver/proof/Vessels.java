package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;
import ovenloom.solver.place.Run;

/**
 * No more vessels of a kind are in use than there are, from the step that fills them until all is out of them. That what was in use has to be
 * washed is left out.
 */
final class Vessels {

  private final Relaxation relaxation;
  private final CpModel model;
  private final Event event;
  private final List<Run> apart;

  private Vessels(Relaxation relaxation) {
    this.relaxation = relaxation;
    model = relaxation.model();
    event = relaxation.laidOut().event();
    apart = BatchesOf.inVesselsOfTheirOwn(relaxation.runs());
  }

  static void add(Relaxation relaxation) {
    Vessels vessels = new Vessels(relaxation);
    vessels.event.kitchen().vessels().forEach(vessels::add);
  }

  private void add(Vessel vessel) {
    List<Filling> fillings = relaxation.work()
        .fillings()
        .stream()
        .filter(filling -> filling.vessel().equals(vessel.name()) && apart.contains(run(filling.first())))
        .toList();
    if (fillings.stream().mapToInt(Filling::count).sum() <= vessel.count() && isAlwaysThere(vessel)) {
      return;
    }
    CumulativeConstraint pool = Shares.shared(model, Capacity.of(
        new Stretch(event.from(), event.to()),
        minute -> Capacity.open(vessel.open(), vessel.count(), minute),
        Capacity.turns(vessel.open())));
    for (Filling filling : fillings) {
      String what = vessel.name() + " (" + filling.count() + " of " + vessel.count() + ")";
      if (relaxation.keeps(Claim.takes(Relaxation.step(run(filling.first())), what))) {
        pool.addDemand(whileFilled(filling), filling.count());
      }
    }
  }

  private static boolean isAlwaysThere(Vessel vessel) {
    return vessel.open().hours().isEmpty() && vessel.open().taken().isEmpty();
  }

  private Run run(int step) {
    return relaxation.runs().get(relaxation.laidOut().runOf().get(step));
  }

  private IntervalVar whileFilled(Filling filling) {
    Run first = run(filling.first());
    int from = relaxation.from(first);
    int to = filling.toTheTable()
        ? event.endOfService(relaxation.work().steps().get(filling.steps().getLast()).dish())
        : event.to();
    IntVar end = model.newIntVar(filling.toTheTable() ? to : from, Math.max(from, to), "emptied");
    IntStream.concat(
        filling.steps().stream().mapToInt(Integer::intValue),
        filling.movers().stream().mapToInt(Integer::intValue))
        .map(step -> run(step).index())
        .distinct()
        .forEach(run -> model.addGreaterOrEqual(end, relaxation.end(run)));
    return model.newIntervalVar(relaxation.start(first.index()),
        model.newIntVar(0, event.to() - event.from(), "minutes filled"), end, "filled");
  }
}
