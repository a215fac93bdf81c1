package ovenloom.solver.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.OvenLog;
import ovenloom.solver.timeline.CountTimeline;

/**
 * What a finished draft draws on each circuit. An oven's minutes depend on its neighbours in time, so this is counted
 * when all runs are placed; the search finds its way round what is too much.
 */
final class Circuits {

  private final Runs runs;
  private final DialLog dials;

  Circuits(Runs runs) {
    this.runs = runs;
    dials = new DialLog(runs.event());
  }

  /** Notes on the draft every circuit that is asked for more than it gives, by the minutes for which it is. */
  void check(Draft draft) {
    Kitchen kitchen = runs.event().kitchen();
    if (kitchen.circuits().isEmpty()) {
      return;
    }
    List<OvenLog> logs = dials.of(draft);
    for (Circuit circuit : kitchen.circuits()) {
      CountTimeline drawn = new CountTimeline(
          runs.event().from(), runs.event().to(), circuit.limit().watts());
      logs.forEach(log -> draw(drawn, circuit, kitchen.oven(log.oven()), log));
      runs.runs().forEach(run -> draw(drawn, circuit, run, draft));
      for (int wait = 0; wait < runs.waits().size(); wait++) {
        draft.parts(wait).forEach(part -> draw(drawn, circuit, part));
      }
      int minutes = drawn.minutesShort();
      if (minutes > 0) {
        draft.fallsShort(minutes);
      }
    }
  }

  private static void draw(CountTimeline drawn, Circuit circuit, @Nullable Oven oven, OvenLog log) {
    if (oven != null && circuit.name().equals(oven.circuit())) {
      log.spans()
          .forEach(span -> drawn.take(span.when().from(), span.when().to(), oven.heating().watts(), 0));
    }
  }

  private void draw(CountTimeline drawn, Circuit circuit, Run run, Draft draft) {
    int from = draft.start(run.index());
    int to = draft.end(run.index());
    for (int pot = 0; pot < draft.burnersOf(run.index()); pot++) {
      draw(drawn, circuit, draft.burner(run.index(), pot), from, to);
    }
    for (Need.OnAppliance need : run.step().appliances()) {
      Appliance appliance = runs.event().kitchen().appliance(need.appliance());
      if (appliance != null && circuit.name().equals(appliance.circuit())) {
        drawn.take(from, to, appliance.draws().watts(), run.index());
      }
    }
  }

  private void draw(CountTimeline drawn, Circuit circuit, WaitPart part) {
    for (int pot = 0; part.kind() == WaitPart.Kind.BURNER && pot < part.levels(); pot++) {
      draw(drawn, circuit, part.level(pot), part.from(), part.to());
    }
  }

  private void draw(CountTimeline drawn, Circuit circuit, int number, int from, int to) {
    Burner burner = runs.event().kitchen().burners().get(number);
    if (circuit.name().equals(burner.circuit())) {
      drawn.take(from, to, burner.power().watts(), 0);
    }
  }
}
