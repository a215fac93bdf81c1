package ovenloom.solver.proof;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;

/** One question to CP-SAT, put so that the answer hangs on the model alone, unless somebody stops it. */
final class Solving {

  private static final double ROUNDING = 1e-6;

  private final CpSolver solver = new CpSolver();
  private CpSolverStatus status = CpSolverStatus.UNKNOWN;

  /**
   * A search that Ctrl-C does not end by itself: by CP-SAT's own handler of it, the program would.
   *
   * @param limit in CP-SAT's own seconds, which it counts by what it does
   */
  Solving(double limit) {
    solver.getParameters()
        .setNumWorkers(1)
        .setRandomSeed(1)
        .setMaxDeterministicTime(limit)
        .setCatchSigintSignal(false);
  }

  /** The same for a model with costs: these are looked up minute by minute, and probing or symmetries alone would take the limit. */
  Solving ofCosts() {
    solver.getParameters().setCpModelProbingLevel(0).setSymmetryLevel(0);
    return this;
  }

  void solve(CpModel model) {
    status = solver.solve(model);
    if (status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException(model.validate());
    }
  }

  /** May be called by another thread. */
  void stop() {
    solver.stopSearch();
  }

  boolean isRefuted() {
    return status == CpSolverStatus.INFEASIBLE;
  }

  /** No solution costs less, where all cost 0 or more. */
  long bound() {
    return isRefuted() ? 0 : (long) Math.max(0, Math.ceil(solver.bestObjectiveBound() - ROUNDING));
  }
}
