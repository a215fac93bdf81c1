package ovenloom.solver.exact;

import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/** Appliances, and the landing space: no more at once than there is. */
final class Counted {

  private final Cp cp;
  private final Steps steps;

  Counted(Cp cp, Steps steps, Waits waits) {
    this.cp = cp;
    this.steps = steps;
    for (Appliance appliance : steps.event().kitchen().appliances()) {
      appliance(appliance);
    }
    landing(waits);
  }

  private void appliance(Appliance appliance) {
    CumulativeConstraint places = cp.model().addCumulative(appliance.capacity());
    for (BatchStep step : steps.all()) {
      if (step.step().appliances().contains(new Need.OnAppliance(appliance.name()))) {
        add(places, steps.start(step.index()), steps.end(step.index()), 1);
      }
    }
  }

  private void landing(Waits waits) {
    CumulativeConstraint landing = cp.model().addCumulative(steps.event().kitchen().landing());
    for (BatchStep step : steps.all()) {
      int pieces = steps.pieces(step.index());
      if (!step.step().hasAPlace() && pieces > 0) {
        add(landing, steps.start(step.index()), steps.end(step.index()), pieces);
      }
    }
    for (Wait wait : waits.all()) {
      int pieces = steps.pieces(wait.step().index());
      if (pieces > 0) {
        add(landing, wait.from(), wait.aside(), pieces);
        add(landing, wait.back(), wait.to(), pieces);
      }
    }
  }

  private void add(CumulativeConstraint things, LinearArgument from, LinearArgument to, int how) {
    IntVar minutes = cp.number(0, cp.to() - cp.from(), "taken");
    cp.equal(minutes, Cp.minus(to, from));
    things.addDemand(cp.model().newIntervalVar(from, minutes, to, "taken"), how);
  }
}
