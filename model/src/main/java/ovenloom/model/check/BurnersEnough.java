package ovenloom.model.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Burner;
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
      Trouble trouble = burner == null ? null : trouble(scene, pots(scene, step, burner.atLeast()));
      if (trouble != null) {
        found.add(Finding.fatal(Scene.subject(step).key("burner"), trouble));
      }
    }
    return found;
  }

  /** How many pots take at least which burner; what stands there without one takes the one it asks for. */
  private static Map<BurnerSize, Integer> pots(Scene scene, BatchStep step, BurnerSize asked) {
    Map<BurnerSize, Integer> pots = new EnumMap<>(BurnerSize.class);
    for (Filling filling : scene.work().fillingsOf(step.index())) {
      Vessel vessel = scene.event().kitchen().vessel(filling.vessel());
      BurnerSize own = vessel == null ? asked : vessel.burner();
      pots.merge(own.compareTo(asked) > 0 ? own : asked, filling.count(), Integer::sum);
    }
    return pots.isEmpty() ? Map.of(asked, 1) : pots;
  }

  /** Those that need a large burner have one each, those that need a medium one or a larger have one each, and so on. */
  private static @Nullable Trouble trouble(Scene scene, Map<BurnerSize, Integer> pots) {
    for (BurnerSize size : List.of(BurnerSize.LARGE, BurnerSize.MEDIUM, BurnerSize.SMALL)) {
      int wanted = pots.entrySet()
          .stream()
          .filter(pot -> pot.getKey().compareTo(size) >= 0)
          .mapToInt(Map.Entry::getValue)
          .sum();
      List<Burner> there = scene.event()
          .kitchen()
          .burners()
          .stream()
          .filter(each -> each.size().compareTo(size) >= 0)
          .toList();
      if (there.size() < wanted) {
        return new Trouble.TooFewBurners(size, wanted, there.size());
      }
    }
    return null;
  }
}
