package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.measure.Power;

/** Nothing draws more by itself than its circuit gives. */
final class CircuitsEnough implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    Kitchen kitchen = scene.event().kitchen();
    List<Finding> found = new ArrayList<>();
    kitchen.ovens()
        .forEach(oven -> look(kitchen, Subject.oven(oven.name()), oven.heating(), oven.circuit(), found));
    kitchen.appliances()
        .forEach(each -> look(kitchen, Subject.appliance(each.name()), each.draws(), each.circuit(), found));
    return found;
  }

  private static void look(
      Kitchen kitchen, Subject subject, Power draws, @Nullable String name, List<Finding> found) {
    for (Circuit circuit : kitchen.circuits()) {
      if (circuit.name().equals(name) && draws.compareTo(circuit.limit()) > 0) {
        found.add(Finding.fatal(subject.key("circuit"),
            new Trouble.OverCircuit(draws, circuit.name(), circuit.limit())));
      }
    }
  }
}
