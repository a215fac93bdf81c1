package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Placement;

/** No appliance does more at once than it has places for. */
record Appliances() implements KitchenRule {

  @Override
  public String id() {
    return "appliances";
  }

  @Override
  public String sentence() {
    return "No appliance does more at once than it has places for.";
  }

  @Override
  public List<Break> check(Case plan) {
    Map<String, Counted> uses = new TreeMap<>();
    for (Placement run : plan.plan().placements()) {
      for (String appliance : usedBy(plan, run)) {
        uses.computeIfAbsent(appliance, name -> places(plan, name)).take(run.when(), 1, plan.name(run));
      }
    }
    List<Break> breaks = new ArrayList<>();
    uses.forEach((appliance, counted) -> counted.shortfalls()
        .forEach(each -> breaks.add(tooMany(plan, appliance, each))));
    return breaks;
  }

  /** A run takes one place, however many of its batches there are. */
  static List<String> usedBy(Case plan, Placement run) {
    List<BatchStep> steps = plan.steps(run);
    return steps.isEmpty() ? List.of()
        : steps.getFirst()
            .step()
            .appliances()
            .stream()
            .map(Need.OnAppliance::appliance)
            .distinct()
            .toList();
  }

  private static Counted places(Case plan, String name) {
    Appliance appliance = plan.event().kitchen().appliance(name);
    Counted places = new Counted(appliance == null ? 0 : appliance.capacity());
    if (appliance != null) {
      places.takeFrom(appliance.open());
    }
    return places;
  }

  private Break tooMany(Case plan, String name, Counted.Shortfall each) {
    List<String> who = new ArrayList<>(List.of(name));
    who.addAll(each.who());
    Appliance appliance = plan.event().kitchen().appliance(name);
    String what = appliance == null ? "there is no " + name + " here"
        : "the " + name + " has places for " + appliance.capacity() + ", and lacks " + each.by();
    return Break.of(this, who, each.when(), each.by(), Break.Unit.PIECES, what);
  }
}
