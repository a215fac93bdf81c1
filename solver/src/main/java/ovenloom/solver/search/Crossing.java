package ovenloom.solver.search;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Decisions;

/** Makes decisions out of those of two good plans: some dishes are done as in the one, the rest as in the other. */
final class Crossing {

  private Crossing() {}

  static Decisions of(Decisions one, Decisions other, Work work, Random lot) {
    Map<String, Boolean> asInTheOther = new HashMap<>();
    double[] wanted = one.turns();
    double[] othersWanted = other.turns();
    Decisions child = one.copy();
    for (int step = 0; step < wanted.length; step++) {
      String dish = work.steps().get(step).dish().name();
      if (asInTheOther.computeIfAbsent(dish, none -> lot.nextBoolean())) {
        wanted[step] = othersWanted[step];
        child.setAsIn(other, step);
      }
    }
    child.queueBy(wanted);
    return child;
  }
}
