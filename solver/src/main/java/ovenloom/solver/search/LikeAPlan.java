package ovenloom.solver.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.solver.order.Turn;
import ovenloom.solver.place.BakeChoice;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Runs;
import ovenloom.solver.place.Tie;

/**
 * Decides for an event as a plan of nearly the same one has it: what begins last there has its turn first, and bakes go into the oven of the
 * same name at the same marks, and what waits there waits as long here. What that plan does not have, has its turn as if it had the kitchen to itself.
 */
final class LikeAPlan {

  private final Runs runs;
  private final Plan plan;

  private LikeAPlan(Runs runs, Plan plan) {
    this.runs = runs;
    this.plan = plan;
  }

  static Decisions of(Runs runs, Plan plan) {
    return new LikeAPlan(runs, plan).decisions();
  }

  private Decisions decisions() {
    Decoder decoder = new Decoder(runs);
    int[] latest = FirstOrder.latestStarts(runs);
    List<BatchStep> steps = runs.work().steps();
    double[] wanted = new double[steps.size()];
    Decisions decisions = Decisions.open(steps.size());
    for (BatchStep step : steps) {
      int i = step.index();
      Placement there = placement(step);
      decisions.setEarlier(i,
          there == null || step.step().serve() ? 0 : earlier(i, there.when().to(), latest));
      wanted[i] = there == null ? -latest[runs.runOf().get(i)] : -there.when().from();
      decisions.setBake(i, there == null ? Decisions.OPEN : bake(decoder.waysToBake(i), there.baking()));
    }
    decisions.queueBy(wanted);
    return decisions;
  }

  /** Minutes a step that ends so ends before it must, as its food is taken there. */
  private int earlier(int step, int end, int[] latest) {
    Run run = runs.runs().get(runs.runOf().get(step));
    int must = run.due();
    for (Tie tie : runs.ties()) {
      if (tie.earlier() == run.index()) {
        Placement taker = placement(runs.runs().get(tie.later()).units().getFirst());
        must = Math.min(must,
            (taker == null ? latest[tie.later()] : taker.when().from()) - tie.link().least());
      }
    }
    return Math.clamp(must - end, 0, Turn.MOST_MINUTES_EARLIER);
  }

  private @Nullable Placement placement(BatchStep step) {
    return plan.placements()
        .stream()
        .filter(run -> run.dish().equals(step.dish().name()) && run.step().equals(step.step().name()))
        .filter(run -> run.batches().holds(step.batches()))
        .findFirst()
        .orElse(null);
  }

  private int bake(List<BakeChoice> ways, @Nullable Baking there) {
    if (there == null) {
      return Decisions.OPEN;
    }
    List<Setting> marks = there.stages().stream().map(Baking.StageRun::mark).toList();
    Event event = runs.event();
    for (int way = 0; way < ways.size(); way++) {
      Oven oven = event.kitchen().ovens().get(ways.get(way).oven());
      if (oven.name().equals(there.oven()) && ways.get(way).mode().equals(there.mode())
          && ways.get(way).marks().equals(marks)) {
        return way;
      }
    }
    return Decisions.OPEN;
  }
}
