package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;

/** A break outside a cook's hours is a slip of the pen. */
final class BreaksInHours implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.COURSES);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    for (Cook cook : scene.event().cooks()) {
      for (Stretch pause : cook.breaks()) {
        if (cook.hours().stream().noneMatch(hours -> hours.overlaps(pause))) {
          found.add(Finding.note(Subject.cook(cook.name()).key("breaks"), new Trouble.BreakOutsideHours()));
        }
      }
    }
    return found;
  }
}
