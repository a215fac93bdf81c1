package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;

/** No more vessels in use, dirty and in the wash than there are. */
final class Vessels {

  private final Cp cp;
  private final Steps steps;
  private final List<WashUp> washes = new ArrayList<>();

  Vessels(Cp cp, Steps steps) {
    this.cp = cp;
    this.steps = steps;
    for (Vessel vessel : steps.event().kitchen().vessels()) {
      List<Filling> fillings = steps.work()
          .fillings()
          .stream()
          .filter(filling -> filling.vessel().equals(vessel.name()))
          .toList();
      if (fillings.stream().mapToInt(Filling::count).sum() > vessel.count()) {
        share(vessel, fillings);
      }
    }
  }

  List<WashUp> washes() {
    return washes;
  }

  private void share(Vessel vessel, List<Filling> fillings) {
    List<Filling> washable = fillings.stream().filter(filling -> !filling.toTheTable()).toList();
    List<LinearArgument> ends = fillings.stream().map(this::end).toList();
    List<WashUp> own = new ArrayList<>();
    for (int i = 0; i < Math.min(washable.size(), fillings.size() - 1); i++) {
      own.add(wash(vessel, washable));
    }
    for (int i = 1; i < own.size(); i++) {
      cp.model().addImplication(own.get(i).isDone(), own.get(i - 1).isDone());
      cp.atMost(own.get(i - 1).start(), own.get(i).start());
    }
    CumulativeConstraint pieces = cp.model().addCumulative(vessel.count());
    for (int i = 0; i < fillings.size(); i++) {
      LinearArgument from = steps.start(fillings.get(i).first());
      IntVar clean = cp.minute("clean");
      IntVar minutes = cp.number(0, cp.to() - cp.from(), "taken");
      cp.equal(minutes, Cp.minus(clean, from));
      pieces.addDemand(cp.model().newIntervalVar(from, minutes, clean, "filling"), fillings.get(i).count());
      isWashed(ends.get(i), washable.indexOf(fillings.get(i)), own, clean);
    }
    washes.addAll(own);
  }

  /** When its food is out: at the end of what empties it, or of service. */
  private LinearArgument end(Filling filling) {
    if (filling.toTheTable()) {
      BatchStep last = steps.all().get(filling.steps().getLast());
      return LinearExpr.constant(steps.event().endOfService(last.dish()));
    }
    List<LinearArgument> ends = new ArrayList<>();
    filling.steps().forEach(step -> ends.add(steps.end(step)));
    filling.movers().forEach(step -> ends.add(steps.end(step)));
    return cp.latest(ends, "end of a filling");
  }

  private WashUp wash(Vessel vessel, List<Filling> washable) {
    List<Literal> takes = new ArrayList<>();
    washable.forEach(filling -> takes.add(cp.choice("washed")));
    IntVar start = cp.number(cp.from(), Math.max(cp.from(), cp.to() - vessel.wash()), "wash");
    BoolVar isDone = cp.choice("wash is done");
    takes.forEach(each -> cp.model().addImplication(each, isDone));
    cp.oneOf(takes, isDone);
    return new WashUp(vessel.name(), vessel.wash(), start, isDone,
        washable.stream().map(Filling::count).toList(),
        takes);
  }

  private void isWashed(LinearArgument end, int washable, List<WashUp> own, IntVar clean) {
    List<Literal> washed = new ArrayList<>();
    for (WashUp wash : own) {
      if (washable >= 0) {
        Literal takes = wash.takes().get(washable);
        washed.add(takes);
        cp.atMost(end, wash.start(), takes);
        cp.equal(clean, Cp.plus(wash.start(), wash.minutes()), takes);
      }
    }
    cp.model().addAtMostOne(washed);
    cp.equal(clean, LinearExpr.constant(cp.to()), cp.any(washed).not());
  }
}
