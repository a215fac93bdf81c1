package ovenloom.solver.order;

import ai.timefold.solver.core.api.domain.common.PlanningId;
import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningListVariable;
import java.util.ArrayList;
import java.util.List;

/** The one queue in which all turns stand. */
@PlanningEntity
public class Queue {

  @PlanningId
  private String id = "queue";

  private List<Turn> all = new ArrayList<>();

  @PlanningListVariable(valueRangeProviderRefs = "all")
  private List<Turn> turns = new ArrayList<>();

  /** For Timefold. */
  public Queue() {}

  Queue(List<Turn> turns) {
    this.all = new ArrayList<>(turns);
    this.turns = new ArrayList<>(turns);
  }

  @ValueRangeProvider(id = "all")
  public List<Turn> getAll() {
    return all;
  }

  public List<Turn> getTurns() {
    return turns;
  }

  public void setTurns(List<Turn> turns) {
    this.turns = turns;
  }

  public String getId() {
    return id;
  }

  public void setId(String id) {
    this.id = id;
  }
}
