package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Power;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;

/** What is on at one moment never asks more of a circuit than it gives. */
record Circuits() implements KitchenRule {

  @Override
  public String id() {
    return "circuits";
  }

  @Override
  public String sentence() {
    return "What is on at one moment never asks more of a circuit than it gives.";
  }

  @Override
  public List<Break> check(Case plan) {
    Map<String, Counted> draws = new TreeMap<>();
    Kitchen kitchen = plan.event().kitchen();
    kitchen.circuits().forEach(circuit -> draws.put(circuit.name(), new Counted(circuit.limit().watts())));
    plan.plan().ovens().forEach(log -> draw(kitchen.oven(log.oven()), log, draws));
    OnBurner.of(plan).forEach(pot -> draw(kitchen.burner(pot.burner()), pot.when(), draws));
    plan.plan()
        .placements()
        .forEach(run -> Appliances.usedBy(plan, run)
            .forEach(name -> draw(kitchen.appliance(name), run.when(), draws)));
    List<Break> breaks = new ArrayList<>();
    kitchen.circuits().forEach(circuit -> check(circuit, draws, breaks));
    return breaks;
  }

  /** An oven may draw its heating power at any minute at which it is on, holding too. */
  private static void draw(@Nullable Oven oven, OvenLog log, Map<String, Counted> draws) {
    if (oven != null) {
      log.spans().forEach(span -> draw(oven.circuit(), span.when(), oven.heating(), oven.name(), draws));
    }
  }

  private static void draw(@Nullable Burner burner, Stretch when, Map<String, Counted> draws) {
    if (burner != null) {
      draw(burner.circuit(), when, burner.power(), burner.name(), draws);
    }
  }

  private static void draw(@Nullable Appliance appliance, Stretch when, Map<String, Counted> draws) {
    if (appliance != null) {
      draw(appliance.circuit(), when, appliance.draws(), appliance.name(), draws);
    }
  }

  private static void draw(
      @Nullable String circuit, Stretch when, Power power, String who, Map<String, Counted> draws) {
    Counted drawn = circuit == null ? null : draws.get(circuit);
    if (drawn != null) {
      drawn.take(when, power.watts(), who);
    }
  }

  private void check(Circuit circuit, Map<String, Counted> draws, List<Break> breaks) {
    Counted drawn = draws.get(circuit.name());
    if (drawn == null) {
      return;
    }
    for (Counted.Shortfall each : drawn.shortfalls()) {
      List<String> who = new ArrayList<>(List.of(circuit.name()));
      who.addAll(each.who());
      String what = "drawn above " + circuit.limit() + " by " + new Power(Math.toIntExact(each.by()));
      breaks.add(Break.of(this, who, each.when(), each.by(), Break.Unit.WATTS, what));
    }
  }
}
