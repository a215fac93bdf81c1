package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.plan.Spread;

/** How vessels stand wherever more than eight share a rack or shelf. */
final class Spreads {

  private Spreads() {}

  static List<Spread> of(Draft draft) {
    return List.of();
  }
}
