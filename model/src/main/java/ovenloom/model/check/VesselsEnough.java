package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.Need;

/** One run of a step finds as many vessels as it takes, and somewhere to put them down. */
final class VesselsEnough implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    Kitchen kitchen = scene.event().kitchen();
    scene.steps().forEach(of -> {
      int all = 0;
      for (Need.InVessel need : of.step().vessels()) {
        Vessel vessel = kitchen.vessel(need.vessel());
        all += need.count();
        if (vessel != null && vessel.count() < need.count()) {
          found.add(Finding.fatal(of.subject().key("in"),
              new Trouble.TooFewVessels(vessel.name(), need.count(), vessel.count())));
        }
      }
      if (!of.step().hasAPlace() && all > kitchen.landing()) {
        found
            .add(Finding.fatal(of.subject().key("in"), new Trouble.TooLittleLanding(all, kitchen.landing())));
      }
    });
    return found;
  }
}
