package ovenloom.solver.order;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningEntityProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.score.SimpleScore;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What Timefold moves: the queue, and what each turn decides. */
@PlanningSolution
public class Order {

  private @Nullable Price price;

  @PlanningEntityProperty
  private Queue queue = new Queue();

  @PlanningEntityCollectionProperty
  private List<Turn> turns = List.of();

  @ProblemFactCollectionProperty
  private List<Shift> shifts = Shift.ALL;

  @ProblemFactCollectionProperty
  private List<Nudge> nudges = List.of();

  @ProblemFactCollectionProperty
  private List<Option> options = List.of();

  @ProblemFactCollectionProperty
  private List<Meeting> meetings = List.of();

  @PlanningScore
  private @Nullable SimpleScore score;

  /** For Timefold. */
  public Order() {}

  /**
   * An order to start from.
   *
   * @param clock what the search prefers times to be multiples of, minutes
   * @param meetings bakes that may share an oven
   */
  public Order(Price price, List<Turn> turns, int clock, List<Meeting> meetings) {
    this.price = price;
    this.turns = turns;
    this.meetings = meetings;
    nudges = Nudge.all(clock);
    options = turns.stream().flatMap(Option::of).toList();
    queue = new Queue(turns);
  }

  public Queue getQueue() {
    return queue;
  }

  public List<Turn> getTurns() {
    return turns;
  }

  public List<Shift> getShifts() {
    return shifts;
  }

  public List<Nudge> getNudges() {
    return nudges;
  }

  public List<Option> getOptions() {
    return options;
  }

  public List<Meeting> getMeetings() {
    return meetings;
  }

  public @Nullable SimpleScore getScore() {
    return score;
  }

  public void setScore(@Nullable SimpleScore score) {
    this.score = score;
  }

  Price price() {
    return Objects.requireNonNull(price, "price");
  }
}
