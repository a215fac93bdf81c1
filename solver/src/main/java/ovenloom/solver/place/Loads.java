package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Weights;
import ovenloom.model.measure.Mass;

/**
 * Which of several fridges a step had better use, before anybody knows how warm its food is: one into which little else goes within
 * the hour. What is too much in the end, {@link WarmLoads} tells.
 */
final class Loads {

  /** Minutes within which food that goes in counts together. */
  static final int TOGETHER = 60;

  private static final double MILLIGRAMS_A_KILOGRAM = 1e6;

  private final double[] most;
  private final double[] weight;

  Loads(Runs runs) {
    most = most(runs.event().kitchen().stores());
    Weights weights = new Weights(runs.minutes().cards());
    weight = runs.runs()
        .stream()
        .mapToDouble(run -> run.units().stream().mapToDouble(weights::kilograms).sum())
        .toArray();
  }

  /** How much warm food each takes, kg; infinite where it may be any. */
  static double[] most(List<Store> stores) {
    return stores.stream().mapToDouble(store -> {
      Mass mass = store.warmLoad();
      return mass == null ? Double.POSITIVE_INFINITY : mass.milligrams() / MILLIGRAMS_A_KILOGRAM;
    }).toArray();
  }

  /** Whether a store takes all that the steps placed so far put into it within an hour of a moment, and a run's food. */
  boolean takes(Draft draft, int run, int store, int start) {
    double sum = weight[run];
    for (int other = 0; other < weight.length && sum <= most[store]; other++) {
      boolean isThere = other != run && draft.shelves[other] != null && draft.store[other] == store;
      sum += isThere && Math.abs(draft.start[other] - start) < TOGETHER ? weight[other] : 0;
    }
    return sum <= most[store];
  }
}
