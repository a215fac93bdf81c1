package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/** One pot to a burner that is large enough, while it cooks and while it waits there. */
final class Stove {

  private final Cp cp;
  private final Steps steps;
  private final Map<Integer, List<List<Literal>>> pots = new HashMap<>();
  private final Map<Integer, LinearArgument> off = new HashMap<>();
  private final Map<Burner, List<IntervalVar>> taken = new HashMap<>();

  Stove(Cp cp, Steps steps, Waits waits) {
    this.cp = cp;
    this.steps = steps;
    for (BatchStep step : steps.all()) {
      Need.OnBurner need = step.step().burner();
      if (need != null) {
        Wait wait = waits.of(step.index());
        off.put(step.index(), off(step, wait == null ? List.of() : wait.burner(),
            wait == null ? cp.minute("never") : wait.to()));
        pots.put(step.index(), pots(step, need));
      }
    }
    taken.values().forEach(cp.model()::addNoOverlap);
  }

  /** For each pot of a step the choice of each burner. */
  List<List<Literal>> pots(int step) {
    return pots.getOrDefault(step, List.of());
  }

  /** Pots times minutes on the fire, where all burners have one power. */
  List<LinearArgument> minutes() {
    List<LinearArgument> minutes = new ArrayList<>();
    pots.forEach((step, pots) -> pots.forEach(
        pot -> minutes.add(Cp.minus(Objects.requireNonNull(off.get(step)), steps.start(step)))));
    return minutes;
  }

  private LinearArgument off(BatchStep step, List<Literal> stays, LinearArgument taken) {
    LinearArgument end = steps.end(step.index());
    if (stays.isEmpty()) {
      return end;
    }
    IntVar off = cp.minute("off the fire");
    cp.equal(off, end, stays.getFirst().not());
    cp.equal(off, taken, stays.getFirst());
    return off;
  }

  private List<List<Literal>> pots(BatchStep step, Need.OnBurner need) {
    List<List<Literal>> pots = new ArrayList<>();
    List<Vessel> vessels = Pieces.of(steps, step.index());
    for (int pot = 0; pot < Math.max(1, vessels.size()); pot++) {
      BurnerSize own = vessels.isEmpty() ? BurnerSize.SMALL : vessels.get(pot).burner();
      BurnerSize least = own.compareTo(need.atLeast()) > 0 ? own : need.atLeast();
      List<Literal> burners = new ArrayList<>();
      for (Burner burner : steps.event().kitchen().burners()) {
        burners.add(burner.size().compareTo(least) < 0 ? cp.model().falseLiteral() : on(burner, step));
      }
      cp.model().addExactlyOne(burners);
      pots.add(burners);
    }
    return pots;
  }

  private Literal on(Burner burner, BatchStep step) {
    BoolVar here = cp.choice(step + " on " + burner.name());
    LinearArgument from = steps.start(step.index());
    LinearArgument to = Objects.requireNonNull(off.get(step.index()));
    IntVar minutes = cp.number(1, cp.to() - cp.from(), "on the fire");
    cp.equal(minutes, Cp.minus(to, from));
    taken.computeIfAbsent(burner, each -> new ArrayList<>())
        .add(cp.model().newOptionalIntervalVar(from, minutes, to, here, "pot"));
    return here;
  }
}
