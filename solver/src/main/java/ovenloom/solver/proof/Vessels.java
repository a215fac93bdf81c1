package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;
import ovenloom.solver.place.Run;

/**
 * No more vessels of a kind are in use or in a wash than there are, from the step that fills them until all is out of them and they are
 * clean again. Each time that all of a kind have been filled, somebody has washed some before the last is filled.
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

  /** The washes that there are at least; each takes a cook. */
  static List<IntervalVar> add(Relaxation relaxation) {
    Vessels vessels = new Vessels(relaxation);
    return vessels.event.kitchen().vessels().stream().flatMap(each -> vessels.add(each).stream()).toList();
  }

  private List<IntervalVar> add(Vessel vessel) {
    List<Filling> fillings = relaxation.work()
        .fillings()
        .stream()
        .filter(filling -> filling.vessel().equals(vessel.name()) && apart.contains(run(filling.first())))
        .toList();
    if (pieces(fillings) <= vessel.count() && isAlwaysThere(vessel)) {
      return List.of();
    }
    List<Filling> kept = fillings.stream().filter(filling -> keeps(vessel, filling)).toList();
    List<LinearArgument> emptied = kept.stream().map(this::emptied).toList();
    inHours(vessel, kept, emptied);
    CumulativeConstraint clean = model.addCumulative(vessel.count());
    for (int i = 0; i < kept.size(); i++) {
      clean.addDemand(inUse(kept.get(i), emptied.get(i), vessel.wash()), kept.get(i).count());
    }
    return washes(vessel, kept, emptied);
  }

  /** Where they have hours, or others take some: then they are not in use; they may be in a wash. */
  private void inHours(Vessel vessel, List<Filling> kept, List<LinearArgument> emptied) {
    if (!isAlwaysThere(vessel)) {
      CumulativeConstraint there = Shares.shared(model, Capacity.of(
          new Stretch(event.from(), event.to()),
          minute -> Capacity.open(vessel.open(), vessel.count(), minute),
          Capacity.turns(vessel.open())));
      for (int i = 0; i < kept.size(); i++) {
        there.addDemand(inUse(kept.get(i), emptied.get(i), 0), kept.get(i).count());
      }
    }
  }

  private static int pieces(List<Filling> fillings) {
    return fillings.stream().mapToInt(Filling::count).sum();
  }

  private boolean keeps(Vessel vessel, Filling filling) {
    String what = vessel.name() + " (" + filling.count() + " of " + vessel.count() + ")";
    return relaxation.keeps(Claim.takes(Relaxation.step(run(filling.first())), what));
  }

  private static boolean isAlwaysThere(Vessel vessel) {
    return vessel.open().hours().isEmpty() && vessel.open().taken().isEmpty();
  }

  private Run run(int step) {
    return relaxation.runs().get(relaxation.laidOut().runOf().get(step));
  }

  private LinearArgument begun(Filling filling) {
    return relaxation.start(run(filling.first()).index());
  }

  /** No sooner than its last food is out; with food for the table at the end of service. */
  private LinearArgument emptied(Filling filling) {
    if (filling.toTheTable()) {
      return LinearExpr.constant(
          event.endOfService(relaxation.work().steps().get(filling.steps().getLast()).dish()));
    }
    IntVar end = model.newIntVar(relaxation.from(run(filling.first())), event.to(), "emptied");
    IntStream.concat(
        filling.steps().stream().mapToInt(Integer::intValue),
        filling.movers().stream().mapToInt(Integer::intValue))
        .map(step -> run(step).index())
        .distinct()
        .forEach(run -> model.addGreaterOrEqual(end, relaxation.end(run)));
    return end;
  }

  private IntervalVar inUse(Filling filling, LinearArgument emptied, int wash) {
    int most = event.to() - event.from() + wash;
    return model.newIntervalVar(begun(filling), model.newIntVar(wash, most, "minutes in use"),
        LinearExpr.affine(emptied, 1, wash), "in use");
  }

  /** Between the first that is emptied and the last that is filled, each of as many pieces as there are at most. */
  private List<IntervalVar> washes(Vessel vessel, List<Filling> kept, List<LinearArgument> emptied) {
    int least = Math.ceilDiv(pieces(kept), vessel.count()) - 1;
    if (least < 1) {
      return List.of();
    }
    IntVar first = minute("first emptied");
    model.addMinEquality(first, emptied.toArray(LinearArgument[]::new));
    IntVar last = minute("last filled");
    model.addMaxEquality(last, kept.stream().map(this::begun).toArray(LinearArgument[]::new));
    return IntStream.range(0, least).mapToObj(each -> wash(vessel.wash(), first, last)).toList();
  }

  private IntervalVar wash(int minutes, IntVar first, IntVar last) {
    IntVar start = minute("wash");
    model.addLessOrEqual(first, start);
    model.addLessOrEqual(LinearExpr.affine(start, 1, minutes), last);
    return model.newFixedSizeIntervalVar(start, minutes, "wash");
  }

  private IntVar minute(String name) {
    return model.newIntVar(event.from(), event.to(), name);
  }
}
