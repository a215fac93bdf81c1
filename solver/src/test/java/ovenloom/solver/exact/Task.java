package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.HandsOn;

/**
 * Someone's hands for some minutes.
 *
 * @param step whose; absent for a wash
 * @param bake the bake whose oven it opens
 * @param cooks how many
 * @param isDone absent where it must be
 * @param by the choice of each cook
 * @param window when it may be at all
 */
record Task(HandsOn.Act act, @Nullable BatchStep step, @Nullable Bake bake, LinearArgument start, int minutes,
    int cooks, @Nullable Literal isDone, Map<Cook, Literal> by, Stretch window) {

  /** Whether it may be done in the same breath as another at the same oven. */
  boolean isAtTheDoor() {
    return act != HandsOn.Act.WORK;
  }

  boolean isServing() {
    return step != null && step.step().serve();
  }
}
