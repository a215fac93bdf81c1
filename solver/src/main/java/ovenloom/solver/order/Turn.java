package ovenloom.solver.order;

import ai.timefold.solver.core.api.domain.common.PlanningId;
import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.valuerange.ValueRange;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeFactory;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.solver.place.Decisions;

/** A step's turn in the order, and what is decided for it. */
@PlanningEntity
public class Turn {

  /** Two weeks. */
  public static final int MOST_MINUTES_EARLIER = 14 * 24 * 60;

  /** What takes the food of a step that no other takes. */
  public static final int THE_TABLE = -1;

  private Amiss amiss = new Amiss(0);
  private int step;
  private int taker;
  private boolean serves;
  private Choices choices = new Choices(0, 0, 0, 0);
  private int mostTogether;
  private @Nullable Integer earlier = 0;
  private @Nullable Integer start = Decisions.OPEN;
  private @Nullable Integer bake = Decisions.OPEN;
  private @Nullable Integer stay = Decisions.OPEN;
  private @Nullable Integer together;

  /** For Timefold. */
  public Turn() {}

  /**
   * A turn with everything left to the decoder, and as many batches together as may be.
   *
   * @param step its index in the work
   * @param kind the same for all batches of one step of the menu
   * @param taker the step that takes its food, the first of them; or {@link #THE_TABLE}
   * @param serves whether it brings food to the table
   * @param starts how many it may have
   * @param waysToBake how many there are
   * @param waysToWait how many sorts of places its food may wait in
   * @param mostTogether batches that may share a run of it, if it is the first of them; else 1
   */
  public Turn(
      int step, int kind, int taker, boolean serves, int starts, int waysToBake, int waysToWait,
      int mostTogether) {
    this.step = step;
    this.taker = taker;
    choices = new Choices(kind, starts, waysToBake, waysToWait);
    this.serves = serves;
    this.mostTogether = mostTogether;
    together = mostTogether;
  }

  /** Which steps came out wrong. */
  Amiss amiss() {
    return amiss;
  }

  /** Of the search that it is in. */
  public void watch(Amiss search) {
    amiss = search;
  }

  @PlanningId
  public int getStep() {
    return step;
  }

  /** Whether it brings food to the table. */
  public boolean serves() {
    return serves;
  }

  /** Whether another is a batch of the same step of the menu, or this itself. */
  boolean isABatchWith(Turn other) {
    return choices.kind == other.choices.kind;
  }

  /** Which step of the menu it is of, and what there is to choose: the same for batches of which one may be done as the other. */
  Choices choices() {
    return choices;
  }

  /** Of which step of the menu, and how many there are to choose from. */
  record Choices(int kind, int starts, int waysToBake, int waysToWait) {}

  int taker() {
    return taker;
  }

  int starts() {
    return choices.starts;
  }

  int waysToBake() {
    return choices.waysToBake;
  }

  /** How many sorts of places its food may wait in; the last is none, where a step takes it. */
  int waysToWait() {
    return choices.waysToWait;
  }

  int mostTogether() {
    return mostTogether;
  }

  @ValueRangeProvider(id = "minutes earlier")
  public ValueRange<Integer> getMinutesEarlier() {
    return ValueRangeFactory.createIntValueRange(0, MOST_MINUTES_EARLIER + 1);
  }

  @ValueRangeProvider(id = "starts")
  public ValueRange<Integer> getStarts() {
    return ValueRangeFactory.createIntValueRange(Decisions.OPEN, choices.starts);
  }

  @ValueRangeProvider(id = "ways to bake")
  public ValueRange<Integer> getWaysToBake() {
    return ValueRangeFactory.createIntValueRange(Decisions.OPEN, choices.waysToBake);
  }

  @ValueRangeProvider(id = "ways to wait")
  public ValueRange<Integer> getWaysToWait() {
    return ValueRangeFactory.createIntValueRange(Decisions.OPEN, choices.waysToWait);
  }

  @ValueRangeProvider(id = "batches together")
  public ValueRange<Integer> getBatchesTogether() {
    return ValueRangeFactory.createIntValueRange(1, mostTogether + 1);
  }

  /** Minutes it ends before it must. */
  @PlanningVariable(valueRangeProviderRefs = "minutes earlier")
  public @Nullable Integer getEarlier() {
    return earlier;
  }

  public void setEarlier(@Nullable Integer earlier) {
    this.earlier = earlier;
  }

  /** How cold its food goes into the oven. */
  @PlanningVariable(valueRangeProviderRefs = "starts")
  public @Nullable Integer getStart() {
    return start;
  }

  public void setStart(@Nullable Integer start) {
    this.start = start;
  }

  /** Which way to bake it. */
  @PlanningVariable(valueRangeProviderRefs = "ways to bake")
  public @Nullable Integer getBake() {
    return bake;
  }

  public void setBake(@Nullable Integer bake) {
    this.bake = bake;
  }

  /** In which sort of place its food waits. */
  @PlanningVariable(valueRangeProviderRefs = "ways to wait")
  public @Nullable Integer getStay() {
    return stay;
  }

  public void setStay(@Nullable Integer stay) {
    this.stay = stay;
  }

  /** How many batches share a run of it at most. */
  @PlanningVariable(valueRangeProviderRefs = "batches together")
  public @Nullable Integer getTogether() {
    return together;
  }

  public void setTogether(@Nullable Integer together) {
    this.together = together;
  }

  /** Decides for a step what decisions say. */
  public void set(Decisions decisions) {
    earlier = decisions.earlier(step);
    start = decisions.start(step);
    bake = decisions.bake(step);
    stay = decisions.stay(step);
    together = Math.min(decisions.together(step), mostTogether);
  }

  /** Says what it decides for its step. */
  public void tell(Decisions decisions) {
    decisions.setEarlier(step, Objects.requireNonNull(earlier));
    decisions.setStart(step, Objects.requireNonNull(start));
    decisions.setBake(step, Objects.requireNonNull(bake));
    decisions.setStay(step, Objects.requireNonNull(stay));
    int batches = Objects.requireNonNull(together);
    decisions.setTogether(step, batches < mostTogether ? batches : Decisions.AS_MANY_AS_MAY);
  }

  @Override
  public String toString() {
    return "turn of step " + step;
  }
}
