package ovenloom.solver.exact;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;
import ovenloom.solver.proof.NativeLibrary;

/**
 * All rules of a large kitchen, for CP-SAT: what {@link Exact} says minute by minute is said in stretches here, which is only possible
 * where one vessel fills an oven, there are vessels enough, and nobody asks for calm, few turns of dials and little energy.
 */
public final class FullModel {

  /** Kinds of search that CP-SAT takes turns with: with only one for each processor it leaves out those that find a first plan. */
  private static final int WORKERS = 8;
  private static final List<Wish> NOT_SAID_HERE = List.of(Wish.CALM, Wish.DIAL, Wish.ENERGY);

  private final Event event;
  private final Cp cp;
  private final Steps steps;
  private final Waits waits;
  private final List<Bake> bakes;
  private final OneByOne ovens;
  private final Racks racks;
  private final Shelves shelves;
  private final Stove stove;
  private final Vessels vessels;
  private final Map<Cook, List<Cook>> alike;
  private final Tasks tasks;
  private final TableLoss loss;
  private final Points points;

  private FullModel(Event event) {
    this.event = event;
    cp = new Cp(event.from(), event.to());
    steps = new Steps(cp, Work.of(event));
    waits = new Waits(cp, steps);
    Bending bending = new Bending(steps.work());
    bakes = new Bakes(cp, steps, waits, bending).all();
    Heat heat = new Heat(cp, steps, waits, bakes, bending);
    heat.refuseAWarmLoad();
    ovens = new OneByOne(cp, steps, bakes);
    racks = new Racks(cp, steps, bakes);
    shelves = new Shelves(cp, steps, waits);
    new RawBelow(cp, steps, shelves, bending);
    stove = new Stove(cp, steps, waits);
    new Counted(cp, steps, waits);
    vessels = new Vessels(cp, steps);
    alike = Roster.alike(event.cooks());
    tasks = new Tasks(cp, steps, bakes, List.of(), alike.keySet());
    new OneThingAtATime(cp, alike, tasks.all());
    loss = new TableLoss(cp, steps, waits);
    points = new Points(cp, steps, waits, bakes, heat, List.of());
    refuseWhatIsNotSaidHere();
  }

  /**
   * How far CP-SAT came.
   *
   * @param plan the best it found; absent where it found none
   * @param bound nothing costs less: what is lost at the table and the wishes, one for one
   */
  public record Reached(@Nullable Plan plan, long bound) {}

  /**
   * The best plan CP-SAT finds in so many seconds on all processors, by what is lost at the table and the wishes, one for one.
   *
   * @throws UnsupportedOperationException for an event with something in it that this knows no rule for
   */
  public static Reached of(Event event, int seconds) {
    NativeLibrary.isLoaded();
    return new FullModel(event).solve(seconds);
  }

  private Reached solve(int seconds) {
    cp.model()
        .minimize(LinearExpr.newBuilder().add(Cp.sum(loss.byDish().values())).add(points.sum()).build());
    CpSolver solver = new CpSolver();
    solver.getParameters()
        .setNumWorkers(WORKERS)
        .setRandomSeed(1)
        .setMaxTimeInSeconds(seconds);
    CpSolverStatus status = solver.solve(cp.model());
    return switch (status) {
      case OPTIMAL, FEASIBLE -> new Reached(plan(solver), Math.round(solver.bestObjectiveBound()));
      case UNKNOWN -> new Reached(null, Math.round(solver.bestObjectiveBound()));
      case INFEASIBLE, MODEL_INVALID, UNRECOGNIZED -> throw new IllegalStateException(
          event.name() + ": " + status + " " + cp.model().validate());
    };
  }

  private Plan plan(CpSolver solver) {
    Answers answers = new Answers(solver);
    Roster roster = new Roster(answers, tasks.all(), alike);
    return new FairPlan(event, answers, steps, waits, bakes, ovens.uses(), racks, shelves, stove, tasks,
        roster, vessels,
        loss, points).plan();
  }

  private void refuseWhatIsNotSaidHere() {
    boolean isBusy = NOT_SAID_HERE.stream().anyMatch(wish -> event.wishes().weight(wish) > 0);
    if (!Exact.knows(event) || isBusy || !vessels.washes().isEmpty()) {
      throw new UnsupportedOperationException(
          "circuits, batches together, hours with nobody there, or washes");
    }
  }
}
