package ovenloom.cli.compare;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.HandPlan;
import ovenloom.cli.sheet.SheetLines;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Bound;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.solver.batch.Outcome;
import ovenloom.solver.proof.Claim;
import ovenloom.solver.search.Found;

/** Suppers planned by hand, to be compared. */
public final class Sides {

  /** Rice and a pie for eight, one host. */
  static final String PIE = SheetLines.KITCHEN + SheetLines.HOST + """
      dishes:
        - dish: Rice
          steps: [{do: cook, takes: 20 min, burner: small, in: pot, hands: {first: 10 min}}]
        - dish: Pie
          steps: [{do: bake, takes: 40 min, bake: {at: 200 C}, in: dish, hands: {first: 5 min}}]
      """;

  private Sides() {}

  /** The pie from a minute on, the rice from another. */
  static Plan pie(int pie, int rice) {
    return HandPlan.forProblem(PIE).run("Pie/bake", pie).run("Rice/cook", rice).plan();
  }

  /** The same plan with other points. */
  static Plan with(Plan plan, Map<String, Long> lost, long wishes, @Nullable Bound bound) {
    Event event = plan.event();
    Score score = Score.of(0, lost, Map.of(Wish.CALM, wishes), event.wishes(), 0);
    return new Plan(event, plan.sources(), plan.placements(), plan.stays(), plan.ovens(), plan.washes(),
        plan.layouts(), score, bound);
  }

  /** One that has a plan. */
  public static Contender planned(String name, Plan plan) {
    return Contender.of(name, plan.event(), new Outcome.APlan(plan));
  }

  /** One of which it is proven that there is no plan. */
  public static Contender proven(String name, Event event) {
    return Contender.of(name, event, new Outcome.Clashing(List.<Claim>of()));
  }

  /** One for which nothing was found. */
  static Contender noneFound(String name, Plan tried) {
    return Contender.of(name, tried.event(),
        new Outcome.NoneFound(
            new Found(tried, ovenloom.model.audit.Audit.of(tried.event(), tried), List.of(), false, 20)));
  }
}
