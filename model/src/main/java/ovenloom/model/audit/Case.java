package ovenloom.model.audit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Life;
import ovenloom.model.life.Unsaid;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;

/** A plan under audit, beside the work it is a plan for. */
public final class Case {

  private final Cards cards;
  private final Plan plan;
  private @Nullable Life life;

  /**
   * Opens a case.
   *
   * @param cards of the work
   */
  public Case(Cards cards, Plan plan) {
    this.cards = cards;
    this.plan = plan;
  }

  Cards cards() {
    return cards;
  }

  /** The plan. */
  public Plan plan() {
    return plan;
  }

  /** How warm its food is, cooling slowly where no card says; to be asked of plans that keep all rules of the timetable. */
  Life life() {
    Life followed = life == null ? Life.of(plan, cards, 1, Unsaid.LOOSE) : life;
    life = followed;
    return followed;
  }

  /** The same, cooling fast. */
  Life openLife() {
    return Life.of(plan, cards, 1, Unsaid.OPEN);
  }

  /** What is planned. */
  public Work work() {
    return cards.work();
  }

  /** For which event. */
  public Event event() {
    return work().event();
  }

  /** All the runs that do a step: one, in a plan without breaks. */
  List<Placement> runs(BatchStep step) {
    return plan.placements()
        .stream()
        .filter(run -> run.dish().equals(step.dish().name()) && run.step().equals(step.step().name()))
        .filter(run -> run.batches().holds(step.batches()))
        .toList();
  }

  /** The run that does a step; absent where the plan forgot it. */
  public @Nullable Placement run(BatchStep step) {
    List<Placement> runs = runs(step);
    return runs.isEmpty() ? null : runs.getFirst();
  }

  /** The run that does a step by its index in the work(). */
  @Nullable
  Placement run(int step) {
    return run(work().steps().get(step));
  }

  /** The steps a run does, in the order of their batches; none where the menu has no such step. */
  public List<BatchStep> steps(Placement run) {
    return steps(run.dish(), run.step(), run.batches());
  }

  /** The steps whose food a stay holds, in the order of their batches; none where the menu has no such step. */
  List<BatchStep> steps(Stay stay) {
    return steps(stay.dish(), stay.step(), stay.batches());
  }

  private List<BatchStep> steps(String dish, String step, Batches batches) {
    return work().steps()
        .stream()
        .filter(each -> dish.equals(each.dish().name()) && step.equals(each.step().name()))
        .filter(each -> batches.holds(each.batches()))
        .toList();
  }

  /** Where a step's food waits; absent where the plan has no stay for it. */
  @Nullable
  Stay stay(BatchStep step) {
    return plan.stays()
        .stream()
        .filter(stay -> stay.dish().equals(step.dish().name()) && stay.step().equals(step.step().name()))
        .filter(stay -> stay.batches().holds(step.batches()))
        .findFirst()
        .orElse(null);
  }

  /** As a cook would call it: {@code bread/bake}, {@code bread/bake (batch 2)}. */
  public String name(Placement run) {
    return name(run.dish(), run.step(), run.batches());
  }

  /** As the step whose food it is. */
  String name(Stay stay) {
    return name(stay.dish(), stay.step(), stay.batches());
  }

  private String name(String dish, String step, Batches batches) {
    String name = dish + "/" + step;
    boolean all = event().dishes()
        .stream()
        .anyMatch(each -> each.name().equals(dish) && batches.count() == each.batches());
    if (all) {
      return name;
    }
    return batches.count() == 1 ? name + " (batch " + batches.first() + ")"
        : name + " (batches " + batches.first() + "-" + batches.last() + ")";
  }
}
