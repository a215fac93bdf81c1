package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;

/**
 * The ways in which food may spend the time before a bake, in minutes: on the counter, then in the cold, then on the counter again.
 *
 * @param before at most on the counter before the cold; 0 where that makes no difference
 * @param cold at most in the cold
 * @param after at most on the counter after it
 */
record Grid(int before, int cold, int after) {

  /** Cells, numbered. */
  int size() {
    return (before + 1) * (cold + 1) * (after + 1);
  }

  /** The number of a cell. */
  int cell(int minutesBefore, int minutesCold, int minutesAfter) {
    return (minutesBefore * (cold + 1) + minutesCold) * (after + 1) + minutesAfter;
  }

  /** The number of the cell that a model chooses. */
  LinearExpr cell(LinearArgument minutesBefore, LinearArgument minutesCold, LinearArgument minutesAfter) {
    return LinearExpr.newBuilder()
        .addTerm(minutesBefore, (long) (cold + 1) * (after + 1))
        .addTerm(minutesCold, after + 1)
        .add(minutesAfter)
        .build();
  }
}
