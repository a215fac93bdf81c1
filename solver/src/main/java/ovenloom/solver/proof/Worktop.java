package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Wait;

/**
 * What is worked on in vessels, and stands nowhere else, and what waits and keeps, or fits, nowhere else, has room on the worktop. Food that more
 * than one step takes is left out while it waits.
 */
final class Worktop {

  private final Relaxation relaxation;
  private final CpModel model;
  private final CumulativeConstraint worktop;
  private final int room;

  private Worktop(Relaxation relaxation) {
    this.relaxation = relaxation;
    model = relaxation.model();
    Event event = relaxation.laidOut().event();
    room = event.kitchen().landing();
    worktop = model.addCumulative(room);
  }

  static void add(Relaxation relaxation) {
    Worktop worktop = new Worktop(relaxation);
    BatchesOf.inVesselsOfTheirOwn(relaxation.runs()).forEach(worktop::work);
    relaxation.laidOut().waits().forEach(worktop::wait);
  }

  private void work(Run run) {
    if (!run.step().hasAPlace() && !run.pieces().isEmpty()) {
      take(run, run.pieces().size(), relaxation.start(run.index()), relaxation.end(run.index()));
    }
  }

  private void wait(Wait wait) {
    Run run = relaxation.runs().get(wait.run());
    boolean isOnTheCounter = !relaxation.extents().mayStayOnTheHeat(wait)
        && relaxation.extents().stores(wait).isEmpty();
    boolean isItsOwn = !run.step().together().oneVessel();
    if (isOnTheCounter && isItsOwn && wait.takers().size() == 1 && !wait.pieces().isEmpty()) {
      Wait.Taker taker = wait.takers().getFirst();
      take(run, wait.pieces().size(), relaxation.end(run.index()),
          taker.run() == Wait.TABLE ? LinearExpr.constant(taker.due()) : relaxation.start(taker.run()));
    }
  }

  private void take(Run run, int pieces, LinearArgument from, LinearArgument to) {
    String what = "the worktop (" + pieces + " of " + room + " places)";
    if (relaxation.keeps(Claim.takes(Relaxation.step(run), what))) {
      Event event = relaxation.laidOut().event();
      worktop.addDemand(
          model.newIntervalVar(from, model.newIntVar(0, event.to() - event.from(), "minutes there"), to,
              "on the worktop"),
          pieces);
    }
  }
}
