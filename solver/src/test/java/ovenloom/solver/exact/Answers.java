package ovenloom.solver.exact;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.List;

/** What a solved model chose. */
record Answers(CpSolver solver) {

  boolean is(Literal choice) {
    return solver.booleanValue(choice);
  }

  boolean anyIs(List<Literal> choices) {
    return choices.stream().anyMatch(this::is);
  }

  int of(LinearArgument number) {
    return Math.toIntExact(solver.value(number));
  }

  /** The first of some choices that was made. */
  int which(List<Literal> choices) {
    for (int i = 0; i < choices.size(); i++) {
      if (is(choices.get(i))) {
        return i;
      }
    }
    throw new IllegalStateException("nothing was chosen");
  }
}
