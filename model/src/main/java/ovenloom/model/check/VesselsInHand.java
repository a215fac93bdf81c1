package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;

/** Whatever a step takes its food from is in different vessels, since none can be washed before it begins. */
final class VesselsInHand implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN, Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    for (BatchStep step : scene.firstBatches()) {
      for (Vessel vessel : scene.event().kitchen().vessels()) {
        int wanted = inHand(scene, step, vessel);
        if (wanted > vessel.count() && own(step, vessel) <= vessel.count()) {
          found.add(Finding.fatal(Scene.subject(step).key("in"),
              new Trouble.TooFewInHand(vessel.name(), wanted, vessel.count())));
        }
      }
    }
    return found;
  }

  /** What goes to the table is counted there. */
  private static int inHand(Scene scene, BatchStep step, Vessel vessel) {
    return scene.work()
        .fillings()
        .stream()
        .filter(filling -> filling.vessel().equals(vessel.name()) && !filling.toTheTable())
        .filter(filling -> filling.steps().contains(step.index()) || filling.movers().contains(step.index()))
        .filter(scene::isByItself)
        .mapToInt(Filling::count)
        .sum();
  }

  private static int own(BatchStep step, Vessel vessel) {
    return step.step()
        .vessels()
        .stream()
        .filter(need -> need.vessel().equals(vessel.name()))
        .mapToInt(need -> need.count())
        .sum();
  }
}
