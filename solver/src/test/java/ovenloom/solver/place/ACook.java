package ovenloom.solver.place;

import java.util.List;
import java.util.Set;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;

/** Cooks for tests. */
final class ACook {

  private ACook() {}

  /** {@code aCook("Ines", 0, 600, "carving")}. */
  static Cook aCook(String name, int from, int to, String... skills) {
    return new Cook(name, List.of(new Stretch(from, to)), List.of(), Set.of(skills));
  }

  static Cook withBreak(Cook cook, int from, int to) {
    return new Cook(cook.name(), cook.hours(), List.of(new Stretch(from, to)), cook.skills());
  }
}
