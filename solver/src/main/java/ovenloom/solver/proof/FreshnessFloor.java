package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Wait;

/** What food that waits is less fresh at least, however much of each stay is in the cold that may be. */
final class FreshnessFloor {

  private static final int SHARES_A_POINT = 360;
  private static final int SHARES_A_MINUTE = 36;

  /** A batch, whose waits are added up. */
  private record Batch(Dish dish, int number) {}

  private final Relaxation relaxation;
  private final CpModel model;
  private final Event event;
  private final int most;

  private FreshnessFloor(Relaxation relaxation) {
    this.relaxation = relaxation;
    model = relaxation.model();
    event = relaxation.work().event();
    most = event.to() - event.from();
  }

  static LinearArgument of(Relaxation relaxation) {
    FreshnessFloor floor = new FreshnessFloor(relaxation);
    Map<Batch, List<Wait>> waits = new LinkedHashMap<>();
    for (Wait wait : relaxation.laidOut().waits()) {
      Run run = relaxation.runs().get(wait.run());
      if (!run.step().together().oneVessel()) {
        waits.computeIfAbsent(new Batch(run.dish(), wait.batches().first()), none -> new ArrayList<>())
            .add(wait);
      }
    }
    LinearExprBuilder points = LinearExpr.newBuilder();
    waits.forEach((batch, all) -> points.add(floor.points(batch.dish(), all)));
    return points.build();
  }

  private LinearArgument points(Dish dish, List<Wait> waits) {
    LinearExprBuilder off = LinearExpr.newBuilder().add(-dish.isBestFor());
    LinearExprBuilder maybeCold = LinearExpr.newBuilder();
    waits.forEach(wait -> (mayBeCold(wait) ? maybeCold : off).add(gap(wait)));
    int longest = most * waits.size();
    IntVar cold = model.newIntVar(0, longest, "minutes in the cold of " + dish.name());
    model.addLessOrEqual(cold, maybeCold);
    IntVar beyond = model.newIntVar(0, longest, "minutes beyond its best of " + dish.name());
    model.addLessOrEqual(off.add(maybeCold).addTerm(cold, -1), beyond);
    IntVar points = model.newIntVar(0, longest, "freshness of " + dish.name());
    LinearExpr over = LinearExpr.newBuilder()
        .addTerm(points, SHARES_A_POINT)
        .addTerm(beyond, -SHARES_A_MINUTE)
        .addTerm(cold, -1)
        .build();
    model.addGreaterOrEqual(over, 1 - SHARES_A_POINT);
    return points;
  }

  private LinearArgument gap(Wait wait) {
    IntVar gap = model.newIntVar(0, most, "wait");
    for (Wait.Taker taker : wait.takers()) {
      LinearArgument taken = taker.run() == Wait.TABLE ? LinearExpr.constant(taker.due())
          : relaxation.start(taker.run());
      model.addLessOrEqual(Relaxation.between(relaxation.end(wait.run()), taken), gap);
    }
    return gap;
  }

  private boolean mayBeCold(Wait wait) {
    return event.kitchen()
        .stores()
        .stream()
        .anyMatch(store -> store.kind().isCold() && wait.keeps().stores().containsKey(store.name()));
  }
}
