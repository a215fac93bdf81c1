package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Rack;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Need;

/** Everything that is baked fits into some oven that can bake it. */
final class OvenRoom implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN, Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    for (BatchStep step : scene.firstBatches()) {
      Need.Bake bake = step.step().bake();
      if (bake == null) {
        continue;
      }
      String key = step.step().vessels().isEmpty() ? "bake" : "in";
      List<Oven> ovens = scene.event()
          .kitchen()
          .ovens()
          .stream()
          .filter(oven -> Marks.canBake(oven, bake))
          .toList();
      for (Trouble trouble : troubles(scene, step, bake, ovens)) {
        found.add(Finding.fatal(Scene.subject(step).key(key), trouble));
      }
    }
    return found;
  }

  private static List<Trouble> troubles(Scene scene, BatchStep step, Need.Bake bake, List<Oven> ovens) {
    List<Filling> fillings = scene.work().fillingsOf(step.index());
    if (fillings.isEmpty()) {
      return List.of(new Trouble.NothingToBakeIn());
    }
    List<Trouble> troubles = new ArrayList<>();
    for (Vessel vessel : scene.vessels(step)) {
      Size size = vessel.size();
      if (size == null) {
        troubles.add(new Trouble.NoSize(vessel.name()));
      } else if (!ovens.isEmpty() && ovens.stream().noneMatch(oven -> takes(oven, size, bake))) {
        troubles.add(new Trouble.NoRack(vessel.name(), size, bake.stands(), bake.level()));
      } else if (!ovens.isEmpty()) {
        int count = fillings.stream()
            .filter(f -> f.vessel().equals(vessel.name()))
            .mapToInt(Filling::count)
            .sum();
        if (ovens.stream().noneMatch(oven -> hasRoom(oven, size, count, bake))) {
          troubles.add(new Trouble.NoRoomForAll(vessel.name(), count));
        }
      }
    }
    return troubles;
  }

  private static boolean takes(Oven oven, Size size, Need.Bake bake) {
    for (int rack = 0; rack < oven.racks().size(); rack++) {
      if (stands(oven, rack, size, bake)) {
        return true;
      }
    }
    return false;
  }

  private static boolean stands(Oven oven, int rack, Size size, Need.Bake bake) {
    Rack under = oven.racks().get(rack);
    boolean level = bake.level() == null || oven.isAt(rack, bake.level());
    return level && Fits.lies(size, under.width(), under.depth()) && height(size, bake) <= above(oven, rack);
  }

  private static long height(Size size, Need.Bake bake) {
    return Math.max(micrometres(size.height()), micrometres(bake.stands()));
  }

  private static long micrometres(@Nullable Length length) {
    return length == null ? 0 : length.micrometres();
  }

  /** All the room from a rack to the top. */
  private static long above(Oven oven, int rack) {
    return oven.racks().stream().skip(rack).mapToLong(each -> each.clear().micrometres()).sum();
  }

  /** By area, which no arrangement gets round. */
  private static boolean hasRoom(Oven oven, Size size, int count, Need.Bake bake) {
    long most = 0;
    for (int rack = 0; rack < oven.racks().size(); rack++) {
      Rack under = oven.racks().get(rack);
      most += stands(oven, rack, size, bake) ? Fits.most(size, under.width(), under.depth()) : 0;
    }
    return count <= most;
  }
}
