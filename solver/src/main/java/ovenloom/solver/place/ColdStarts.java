package ovenloom.solver.place;

import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/** Looks, once all is placed, how warm each bake's food goes in, and whether its minutes are enough and not too many. */
final class ColdStarts {

  private final Runs runs;
  private final MeanWarmth warmth;
  private final Forecast forecast;
  private final double[] begins;

  ColdStarts(Runs runs) {
    this.runs = runs;
    warmth = new MeanWarmth(runs.minutes().cards());
    forecast = new Forecast(runs, warmth);
    begins = new double[runs.work().steps().size()];
  }

  /**
   * Where a bake is too short or too long for how cold its food goes in, decides for the start that it has.
   *
   * @return whether any was
   */
  boolean settle(Draft draft, Fitting fitting) {
    warmth.follow(draft.timetable(), begins);
    boolean settled = false;
    for (Run run : runs.runs()) {
      BakeChoice choice = draft.choice[run.index()];
      int first = run.units().getFirst().index();
      if (choice != null && off(draft, run, choice) > 0) {
        int start = fitting.startFor(run, choice, most(run, choice));
        settled |= start != Decisions.OPEN && start != draft.starts[first];
        draft.starts[first] = start;
      }
    }
    return settled;
  }

  /** Notes where a bake is too short or too long for how cold its food goes in. */
  void check(Draft draft) {
    warmth.follow(draft.timetable(), begins);
    for (Run run : runs.runs()) {
      BakeChoice choice = draft.choice[run.index()];
      if (choice != null) {
        draft.isOff(run.index(), off(draft, run, choice));
        draft.overcooked[run.index()] = BakeMinutes.points(booked(draft, run), least(run, choice));
      }
    }
    forecast.check(draft, begins);
    System.arraycopy(begins, 0, draft.begins, 0, begins.length);
  }

  private int off(Draft draft, Run run, BakeChoice choice) {
    int booked = booked(draft, run);
    int most = most(run, choice);
    int least = least(run, choice);
    Need.Bake bake = run.step().bake();
    if (bake == null || most == BakeMinutes.NEVER) {
      return booked;
    }
    int longest = BakeMinutes.longest(bake, run.units().getFirst(), least);
    return Math.max(0, Math.max(most - booked, booked - longest));
  }

  private static int booked(Draft draft, Run run) {
    return draft.end[run.index()] - draft.start[run.index()];
  }

  /** What the coldest of its batches needs. */
  private int most(Run run, BakeChoice choice) {
    int most = 0;
    for (BatchStep unit : run.units()) {
      most = Math.max(most, choice.needed().of(begins[unit.index()]));
    }
    return most;
  }

  private int least(Run run, BakeChoice choice) {
    int least = BakeMinutes.NEVER;
    for (BatchStep unit : run.units()) {
      least = Math.min(least, choice.needed().of(begins[unit.index()]));
    }
    return least;
  }
}
