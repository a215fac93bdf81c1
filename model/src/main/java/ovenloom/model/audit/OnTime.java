package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Placement;

/** Everything is ready when it is due, and what is served is served at the table time. */
record OnTime() implements KitchenRule {

  @Override
  public String id() {
    return "on time";
  }

  @Override
  public String sentence() {
    return "Everything is ready when it is due, and what is served is served at the table time.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      List<BatchStep> steps = plan.steps(run);
      if (!steps.isEmpty() && steps.getFirst().step().serve()) {
        served(plan, run, steps.getLast(), breaks);
      } else if (!steps.isEmpty()) {
        ready(plan, run, steps.getFirst(), breaks);
      }
    }
    return breaks;
  }

  private void ready(Case plan, Placement run, BatchStep first, List<Break> breaks) {
    int late = run.when().to() - due(plan.event(), first);
    if (late > 0) {
      breaks.add(off(plan, run, late, "it is ready " + late + " min after it is due"));
    }
  }

  private void served(Case plan, Placement run, BatchStep last, List<Break> breaks) {
    int early = due(plan.event(), last) - run.when().from();
    int late = run.when().to() - plan.event().endOfService(last.dish());
    if (early > 0) {
      breaks.add(off(plan, run, early, "it is served " + early + " min before it is due"));
    }
    if (late > 0) {
      breaks.add(off(plan, run, late, "it is served until " + late + " min after the end of service"));
    }
  }

  private static int due(Event event, BatchStep step) {
    return event.due(step.dish(), step.batches().first());
  }

  private Break off(Case plan, Placement run, int minutes, String what) {
    return Break.of(this, List.of(plan.name(run)), run.when(), minutes, Break.Unit.MINUTES, what);
  }
}
