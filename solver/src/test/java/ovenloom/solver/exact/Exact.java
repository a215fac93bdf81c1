package ovenloom.solver.exact;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.solver.proof.NativeLibrary;

/** Finds the best plan of a small event and proves it, or proves that there is none. */
final class Exact {

  /** More than all wishes together can come to. */
  private static final int A_LEVEL = 100_000;

  /** With one, version 9.15 has been seen to fall. */
  private static final int WORKERS = 2;
  private static final int MOST_SECONDS = 120;

  private final Event event;
  private final Cp cp;
  private final Steps steps;
  private final Waits waits;
  private final List<Bake> bakes;
  private final List<OvenLine> ovens;
  private final Racks racks;
  private final Shelves shelves;
  private final Stove stove;
  private final Tasks tasks;
  private final Vessels vessels;
  private final TableLoss loss;
  private final Points points;

  private Exact(Event event) {
    refuseWhatIsNotSaidHere(event);
    this.event = event;
    cp = new Cp(event.from(), event.to());
    steps = new Steps(cp, Work.of(event));
    waits = new Waits(cp, steps);
    Bending bending = new Bending(steps.work());
    bakes = new Bakes(cp, steps, waits, bending).all();
    Heat heat = new Heat(cp, steps, waits, bakes, bending);
    ovens = event.kitchen().ovens().stream().map(oven -> OvenLine.of(cp, oven, bakes)).toList();
    racks = new Racks(cp, steps, bakes);
    shelves = new Shelves(cp, steps, waits);
    new RawBelow(cp, steps, shelves, bending);
    stove = new Stove(cp, steps, waits);
    new Counted(cp, steps, waits);
    vessels = new Vessels(cp, steps);
    tasks = new Tasks(cp, steps, bakes, vessels.washes(), event.cooks());
    Crew crew = new Crew(cp, steps, tasks.all());
    new Doors(cp, steps, bakes, tasks.all(), crew);
    loss = new TableLoss(cp, steps, waits);
    points = new Points(cp, steps, waits, bakes, heat, vessels.washes());
    points.add(new Bustle(cp, steps, ovens, stove, crew));
  }

  /**
   * The best plan, first by what is lost at the table, then by the wishes.
   *
   * @throws UnsupportedOperationException for an event with something in it that this knows no rule for
   */
  static Answer of(Event event) {
    return of(event, A_LEVEL);
  }

  /**
   * The best plan, where a point lost at the table weighs so many points of the wishes.
   *
   * @throws UnsupportedOperationException for an event with something in it that this knows no rule for
   */
  static Answer of(Event event, int level) {
    NativeLibrary.isLoaded();
    return new Exact(event).solve(level);
  }

  /**
   * Whether there is a plan at all; null where that is not known after so many seconds.
   *
   * @throws UnsupportedOperationException for an event with something in it that this knows no rule for
   */
  static @Nullable Boolean isPossible(Event event, int seconds) {
    NativeLibrary.isLoaded();
    CpSolver solver = solver();
    solver.getParameters().setMaxTimeInSeconds(seconds);
    return switch (solver.solve(new Exact(event).cp.model())) {
      case OPTIMAL, FEASIBLE -> true;
      case INFEASIBLE -> false;
      case UNKNOWN, MODEL_INVALID, UNRECOGNIZED -> null;
    };
  }

  private Answer solve(int level) {
    LinearArgument lost = Cp.sum(loss.byDish().values());
    cp.model().minimize(LinearExpr.newBuilder().addTerm(lost, level).add(points.sum()).build());
    CpSolver solver = solver();
    if (!isSolved(solver)) {
      return new Answer.NoPlan();
    }
    Answers answers = new Answers(solver);
    Roster roster = new Roster(answers, tasks.all(), Map.of());
    return new Answer.Best(
        new FairPlan(event, answers, steps, waits, bakes, uses(), racks, shelves, stove, tasks,
            roster, vessels, loss, points).plan());
  }

  private Map<Oven, List<OvenUse>> uses() {
    return ovens.stream().collect(Collectors.toMap(line -> line.dial().oven(), line -> line.dial().uses()));
  }

  private static CpSolver solver() {
    CpSolver solver = new CpSolver();
    solver.getParameters()
        .setNumWorkers(WORKERS)
        .setRandomSeed(1)
        .setMaxTimeInSeconds(MOST_SECONDS);
    return solver;
  }

  private boolean isSolved(CpSolver solver) {
    CpSolverStatus status = solver.solve(cp.model());
    return switch (status) {
      case OPTIMAL -> true;
      case INFEASIBLE -> false;
      case FEASIBLE, UNKNOWN, MODEL_INVALID, UNRECOGNIZED -> throw new IllegalStateException(
          event.name() + ": " + status + " " + cp.model().validate());
    };
  }

  private static void refuseWhatIsNotSaidHere(Event event) {
    if (!knows(event)) {
      throw new UnsupportedOperationException("circuits, batches together, or hours with nobody there");
    }
  }

  /** Whether there is nothing in an event that this knows no rule for. */
  static boolean knows(Event event) {
    Kitchen kitchen = event.kitchen();
    boolean isLimited = !kitchen.circuits().isEmpty();
    boolean isShared = event.dishes()
        .stream()
        .flatMap(dish -> dish.steps().stream())
        .anyMatch(step -> step.together().most() > 1);
    Stretches hours = new Stretches(event.cooks().stream().flatMap(cook -> cook.hours().stream()).toList());
    boolean isAttended = hours.encloses(new Stretch(event.from(), event.to()));
    return !isLimited && !isShared && isAttended;
  }
}
