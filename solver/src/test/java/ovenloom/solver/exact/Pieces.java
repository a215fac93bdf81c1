package ovenloom.solver.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.Filling;

/** The vessels a step's food is in, one by one. */
final class Pieces {

  private Pieces() {}

  static List<Vessel> of(Steps steps, int step) {
    List<Vessel> pieces = new ArrayList<>();
    for (Filling filling : steps.work().fillingsOf(step)) {
      Vessel vessel = Objects.requireNonNull(steps.event().kitchen().vessel(filling.vessel()));
      for (int i = 0; i < filling.count(); i++) {
        pieces.add(vessel);
      }
    }
    return pieces;
  }
}
