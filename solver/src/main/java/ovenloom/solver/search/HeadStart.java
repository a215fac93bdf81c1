package ovenloom.solver.search;

import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Coolness;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Extents;
import ovenloom.solver.place.Runs;

/**
 * How long before they must, dishes that are to be cool or cold are done where they have a head start, so that they have cooled when
 * they come to the table: as far as they keep, and as there is time for all that goes before. Who finds no room gives it up.
 */
final class HeadStart {

  private final Work work;
  private final MeanWarmth warmth;
  private final Coolness coolness;
  private final double[] ends;
  private final Extents extents;

  HeadStart(Runs runs) {
    extents = Extents.of(runs.event());
    work = runs.work();
    warmth = new MeanWarmth(runs.minutes().cards());
    coolness = new Coolness(runs.minutes().cards(), warmth);
    ends = new double[work.steps().size()];
    for (BatchStep step : work.steps()) {
      ends[step.index()] = ends(step);
    }
  }

  /** How warm a step's food is at its end if it never waited, C. */
  private double ends(BatchStep step) {
    int i = step.index();
    if (warmth.isHeated(i)) {
      return warmth.hot(i);
    }
    double sum = 0;
    int[] feeders = warmth.feeders(i);
    for (int feeder : feeders) {
      sum += ends[feeder];
    }
    double begins = feeders.length == 0 ? warmth.fresh(i) : sum / feeders.length;
    return warmth.after(i, place(step), step.minutes(), begins);
  }

  /** The first of the stores that it is in; else the counter. */
  private int place(BatchStep step) {
    return step.step().shelf() == null ? MeanWarmth.COUNTER
        : number(step.step().shelf().stores().getFirst());
  }

  private int number(String store) {
    Store found = work.event().kitchen().store(store);
    return found == null ? MeanWarmth.COUNTER : work.event().kitchen().stores().indexOf(found);
  }

  /** Decides for it. */
  void tell(Decisions decisions) {
    for (BatchStep step : work.steps()) {
      Arrives arrives = step.dish().arrives();
      if (work.goesToTheTable(step.index()) && (arrives == Arrives.COOL || arrives == Arrives.COLD)) {
        tell(step, coolness.most(step.dish()), decisions);
      }
    }
  }

  /** What is served as soon as it is done has waited before. */
  private void tell(BatchStep step, double most, Decisions decisions) {
    if (step.step().serve()) {
      for (int feeder : warmth.feeders(step.index())) {
        tell(work.steps().get(feeder), most, decisions);
      }
    } else if (step.step().keeps() != null) {
      int run = extents.laidOut().runOf().get(step.index());
      int play = extents.latest(run) - extents.earliest(run) - extents.least(run);
      decisions.setEarlier(step.index(), Math.clamp(minutes(step, step.step().keeps(), most), 0, play));
    }
  }

  /** In the cold place that has it cool first; on the counter, where it keeps in none. */
  private int minutes(BatchStep step, Keeps keeps, double most) {
    int clock = work.event().clock();
    double found = keeps.counter() == null ? 0 : cooled(step, MeanWarmth.COUNTER, keeps.counter(), most);
    boolean isKeptCold = false;
    for (var kept : keeps.stores().entrySet()) {
      Store store = work.event().kitchen().store(kept.getKey());
      if (store != null && store.kind().isCold()) {
        double there = cooled(step, number(kept.getKey()), kept.getValue(), most);
        found = isKeptCold ? Math.min(found, there) : there;
        isKeptCold = true;
      }
    }
    return (int) Math.ceil(found / clock) * clock;
  }

  private double cooled(BatchStep step, int place, int keeps, double most) {
    return Math.min(keeps, warmth.minutesTo(step.index(), place, ends[step.index()], most));
  }
}
