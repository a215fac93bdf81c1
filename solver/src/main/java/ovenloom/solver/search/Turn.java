package ovenloom.solver.search;

import ai.timefold.solver.core.api.domain.common.PlanningId;
import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A run's turn in the order, and what the search decides for it. */
@PlanningEntity
public class Turn {

  private int run;
  private List<Choice> choices = List.of();
  private @Nullable Slack slack = Slack.NONE;
  private @Nullable Choice choice = Choice.OPEN;

  /** For Timefold. */
  public Turn() {}

  Turn(int run, int ways) {
    this.run = run;
    choices = ways > 1 ? Choice.upTo(ways) : List.of(Choice.OPEN);
  }

  @PlanningId
  public int getRun() {
    return run;
  }

  @ValueRangeProvider(id = "choices")
  public List<Choice> getChoices() {
    return choices;
  }

  @ValueRangeProvider(id = "slacks")
  public List<Slack> getSlacks() {
    return Slack.ALL;
  }

  @PlanningVariable(valueRangeProviderRefs = "slacks")
  public @Nullable Slack getSlack() {
    return slack;
  }

  public void setSlack(@Nullable Slack slack) {
    this.slack = slack;
  }

  @PlanningVariable(valueRangeProviderRefs = "choices")
  public @Nullable Choice getChoice() {
    return choice;
  }

  public void setChoice(@Nullable Choice choice) {
    this.choice = choice;
  }

  int minutesEarlier() {
    return Objects.requireNonNull(slack, "slack").minutes();
  }

  int wayToBake() {
    return Objects.requireNonNull(choice, "choice").number();
  }

  @Override
  public String toString() {
    return "turn of run " + run;
  }
}
