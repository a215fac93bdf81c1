package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Power;

/** Nothing draws more by itself than its circuit gives. It is no more than worth a note where a plan can do without it. */
final class CircuitsEnough implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    Kitchen kitchen = scene.event().kitchen();
    List<Finding> found = new ArrayList<>();
    for (Oven oven : kitchen.ovens()) {
      look(kitchen, Subject.oven(oven.name()), oven.heating(), oven.circuit(), isNeeded(scene, oven), found);
    }
    for (Appliance each : kitchen.appliances()) {
      look(kitchen, Subject.appliance(each.name()), each.draws(), each.circuit(), isNeeded(scene, each),
          found);
    }
    return found;
  }

  /** Whether some bake can be nowhere else. */
  private static boolean isNeeded(Scene scene, Oven oven) {
    return scene.steps()
        .map(of -> of.step().bake())
        .anyMatch(bake -> bake != null && scene.event()
            .kitchen()
            .ovens()
            .stream()
            .filter(other -> Marks.canBake(other, bake))
            .allMatch(oven::equals));
  }

  private static boolean isNeeded(Scene scene, Appliance appliance) {
    return scene.steps()
        .flatMap(of -> of.step().appliances().stream())
        .anyMatch(need -> need.appliance().equals(appliance.name()));
  }

  private static void look(Kitchen kitchen, Subject subject, Power draws, @Nullable String name,
      boolean isNeeded, List<Finding> found) {
    for (Circuit circuit : kitchen.circuits()) {
      if (circuit.name().equals(name) && draws.compareTo(circuit.limit()) > 0) {
        found.add(new Finding(subject.key("circuit"),
            new Trouble.OverCircuit(draws, circuit.name(), circuit.limit()), isNeeded));
      }
    }
  }
}
