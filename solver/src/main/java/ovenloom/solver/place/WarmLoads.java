package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.life.Weights;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;

/**
 * Foresees, by how warm food is on the whole, where too much that is warm goes into a fridge within an hour. The audit has the
 * last word.
 */
final class WarmLoads {

  /** Above the air of its shelf, K. */
  private static final double WARM = 10;

  /** So many kilograms too much are as bad as a minute. */
  private static final double A_MINUTE = 0.1;

  /** More than this does not make it worse, minutes. */
  private static final int BAD_ENOUGH = 60;

  private static final double NOTHING = 1e-6;
  private static final int PLACES_OF_A_STEP = 4;

  private final MeanWarmth warmth;
  private final boolean anyBound;
  private final double[] warmAt;
  private final double[] most;
  private final double[] weight;
  private final int[] runOf;
  private final int[] food;
  private final int[][] feeders;
  private final int[] inStep;
  private final int[] inStore;
  private final int[] inMinute;
  private int ins;

  WarmLoads(Runs runs, MeanWarmth warmth) {
    this.warmth = warmth;
    Work work = runs.work();
    List<Store> stores = runs.event().kitchen().stores();
    warmAt = stores.stream().mapToDouble(store -> store.holds().inCelsius() + WARM).toArray();
    most = Loads.most(stores);
    anyBound = stores.stream().anyMatch(store -> store.warmLoad() != null);
    Weights weights = new Weights(runs.minutes().cards());
    weight = work.steps().stream().mapToDouble(weights::kilograms).toArray();
    runOf = runs.runOf().stream().mapToInt(Integer::intValue).toArray();
    food = work.steps().stream().filter(step -> step.dish().food()).mapToInt(BatchStep::index).toArray();
    feeders = work.steps().stream().map(step -> warmth.feeders(step.index())).toArray(int[][]::new);
    inStep = new int[weight.length * PLACES_OF_A_STEP];
    inStore = new int[inStep.length];
    inMinute = new int[inStep.length];
  }

  /** Notes the food by which an hour's load becomes too much. */
  void check(Draft draft) {
    if (!anyBound) {
      return;
    }
    find(draft);
    for (int last = 0; last < ins; last++) {
      double sum = 0;
      for (int i = 0; i < ins; i++) {
        int before = inMinute[last] - inMinute[i];
        boolean counts = before > 0 || (before == 0 && i <= last);
        sum += inStore[i] == inStore[last] && counts && before < Loads.TOGETHER ? weight[inStep[i]] : 0;
      }
      double off = sum - most[inStore[last]];
      if (off > NOTHING) {
        draft.isOff(runOf[inStep[last]], (long) Math.ceil(Math.min(BAD_ENOUGH, off / A_MINUTE)));
      }
    }
  }

  private void find(Draft draft) {
    MeanWarmth.Timetable times = draft.timetable();
    ins = 0;
    for (int step : food) {
      int place = times.store(step);
      if (place >= 0 && !wereThere(times, step, place)) {
        add(step, place, times.start(step), draft.begins[step]);
      }
      for (int part = 0; part < times.parts(step); part++) {
        int next = times.place(step, part);
        int from = times.from(step, part);
        if (next >= 0 && next != place) {
          add(step, next, from, warmth.waited(times, step, draft.begins[step], from));
        }
        place = next;
      }
    }
  }

  private void add(int step, int store, int minute, double celsius) {
    if (celsius > warmAt[store] + NOTHING && most[store] < Double.POSITIVE_INFINITY && ins < inStep.length) {
      inStep[ins] = step;
      inStore[ins] = store;
      inMinute[ins++] = minute;
    }
  }

  private boolean wereThere(MeanWarmth.Timetable times, int step, int store) {
    for (int feeder : feeders[step]) {
      int last = times.store(feeder);
      for (int part = 0; part < times.parts(feeder); part++) {
        last = times.from(feeder, part) < times.start(step) ? times.place(feeder, part) : last;
      }
      if (last != store) {
        return false;
      }
    }
    return feeders[step].length > 0;
  }
}
