package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ovenloom.model.menu.Need;
import ovenloom.solver.place.Run;

/**
 * Hands that a step takes from end to end of some minutes, as few as may be.
 *
 * @param from when they begin
 * @param first the first minute of all in which they may
 * @param last the last
 */
record Stint(Run run, Need.Hands hands, LinearArgument from, int first, int last, int minutes) {

  /** Minutes that work in the middle of a step may slip. */
  private static final int SLIP = 3;

  /** All of a kitchen, but for doors; of batches that share a run once. */
  static List<Stint> of(Relaxation relaxation) {
    List<Stint> stints = new ArrayList<>();
    for (Run run : BatchesOf.apart(relaxation.runs())) {
      for (Need.Hands hands : run.step().hands()) {
        stints.add(of(relaxation, run, hands));
      }
    }
    return stints;
  }

  private static Stint of(Relaxation relaxation, Run run, Need.Hands hands) {
    int least = relaxation.extents().least(run.index());
    int most = relaxation.extents().most(run.index());
    int from = relaxation.from(run);
    int last = relaxation.to(run) - least;
    LinearArgument start = relaxation.start(run.index());
    return switch (hands.moment()) {
      case Need.Moment.Throughout() -> new Stint(run, hands, start, from, last, least);
      case Need.Moment.First(int some) -> new Stint(run, hands, start, from, last, Math.min(some, least));
      case Need.Moment.Last(int some) -> {
        int minutes = Math.min(some, least);
        LinearArgument begins = LinearExpr.affine(relaxation.end(run.index()), 1, -minutes);
        yield new Stint(run, hands, begins, from, relaxation.to(run) - minutes, minutes);
      }
      case Need.Moment.At(int after, int some, boolean sharp) -> {
        int minutes = Math.min(some, least);
        int end = relaxation.to(run) - minutes;
        CpModel model = relaxation.model();
        IntVar begins = model.newIntVar(from, Math.max(from, end), "in the middle of " + run);
        model.addLessOrEqual(start, begins);
        model.addLessOrEqual(LinearExpr.affine(begins, 1, minutes), relaxation.end(run.index()));
        if (least == most) {
          model.addLinearConstraint(Relaxation.between(start, begins), Math.max(0, after - SLIP),
              after + SLIP);
        }
        yield new Stint(run, hands, begins, from, Math.max(from, end), minutes);
      }
    };
  }

  /** Whether one of those whose hands they are must have a skill. */
  boolean wants(String skill) {
    return Objects.equals(skill, hands.skill());
  }

  /** Whether it counts as work that should be calm: all but serving. */
  boolean counts() {
    return !run.step().serve();
  }
}
