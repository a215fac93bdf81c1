package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
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
 * @param starts for each cook the choice of each minute to start
 */
record Task(HandsOn.Act act, @Nullable BatchStep step, @Nullable Bake bake, LinearArgument start, int minutes,
    int cooks, @Nullable Literal isDone, Map<Cook, Literal> by, Map<Cook, Map<Integer, Literal>> starts) {

  /** Whether it may be done in the same breath as another at the same oven. */
  boolean isAtTheDoor() {
    return act != HandsOn.Act.WORK;
  }

  boolean isServing() {
    return step != null && step.step().serve();
  }

  /** The choices by which a cook is at it at a minute. */
  List<Literal> covers(Cook cook, int minute) {
    Map<Integer, Literal> mine = starts.getOrDefault(cook, Map.of());
    return IntStream.rangeClosed(minute - minutes + 1, minute)
        .mapToObj(mine::get)
        .filter(Objects::nonNull)
        .toList();
  }
}
