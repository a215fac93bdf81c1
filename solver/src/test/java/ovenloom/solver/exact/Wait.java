package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ovenloom.model.menu.BatchStep;

/**
 * Where a step's food waits: on the counter until {@code aside}, in a place of its own until {@code back}, then on the
 * counter again. A place other than a cold one has it all the time; without one it is on the counter all the time.
 *
 * @param from the end of its step
 * @param to when the last of it is taken
 * @param stores the choice of a cold or hot place, by its name
 * @param cold those of them that are cold
 * @param burner the choice of its burner
 * @param hold the choice of its oven at hold
 * @param off the choice of its oven switched off
 */
record Wait(BatchStep step, LinearArgument from, LinearArgument aside, LinearArgument back, LinearArgument to,
    Map<String, Literal> stores, List<Literal> cold, List<Literal> burner, List<Literal> hold,
    List<Literal> off) {

  /** The choices of the oven, at hold or off. */
  List<Literal> oven() {
    List<Literal> oven = new ArrayList<>(hold);
    oven.addAll(off);
    return oven;
  }

  /** The choices of a place that keeps it hot. */
  List<Literal> hot() {
    List<Literal> hot = new ArrayList<>(oven());
    hot.addAll(burner);
    stores.values().stream().filter(store -> !cold.contains(store)).forEach(hot::add);
    return hot;
  }
}
