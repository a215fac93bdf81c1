package ovenloom.solver.search;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningEntityProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.SimpleScore;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What Timefold moves: the queue, and each turn's slack and way to bake. */
@PlanningSolution
public class Order {

  private @Nullable Trial trial;

  @PlanningEntityProperty
  private Queue queue = new Queue();

  @PlanningEntityCollectionProperty
  private List<Turn> turns = List.of();

  @PlanningScore
  private @Nullable SimpleScore score;

  /** For Timefold. */
  public Order() {}

  Order(Trial trial, List<Turn> turns) {
    this.trial = trial;
    this.turns = turns;
    queue = new Queue(turns);
  }

  public Queue getQueue() {
    return queue;
  }

  public List<Turn> getTurns() {
    return turns;
  }

  public @Nullable SimpleScore getScore() {
    return score;
  }

  public void setScore(@Nullable SimpleScore score) {
    this.score = score;
  }

  Trial trial() {
    return Objects.requireNonNull(trial, "trial");
  }
}
