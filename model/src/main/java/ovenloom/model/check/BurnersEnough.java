package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Need;

/** Each pot of a step has a burner that is large enough. */
final class BurnersEnough implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN, Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    for (BatchStep step : scene.firstBatches()) {
      Need.OnBurner burner = step.step().burner();
      if (burner == null) {
        continue;
      }
      BurnerSize size = burner.atLeast();
      for (Vessel vessel : scene.vessels(step)) {
        size = vessel.burner().compareTo(size) > 0 ? vessel.burner() : size;
      }
      BurnerSize atLeast = size;
      int pots = Math.max(1, scene.work().fillingsOf(step.index()).stream().mapToInt(Filling::count).sum());
      int there = (int) scene.event()
          .kitchen()
          .burners()
          .stream()
          .filter(each -> each.size().compareTo(atLeast) >= 0)
          .count();
      if (there < pots) {
        found.add(Finding.fatal(Scene.subject(step).key("burner"),
            new Trouble.TooFewBurners(atLeast, pots, there)));
      }
    }
    return found;
  }
}
