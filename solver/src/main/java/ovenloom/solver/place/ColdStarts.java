package ovenloom.solver.place;

import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/** Looks, once all is placed, how warm each bake's food goes in, and whether its minutes are enough and not too many. */
class ColdStarts {

  private final Runs runs;
  private final MeanWarmth warmth;
  private final Forecast forecast;
  private final WarmLoads warmLoads;

  ColdStarts(Runs runs) {
    this.runs = runs;
    warmth = new MeanWarmth(runs.minutes().cards());
    forecast = new Forecast(runs, warmth);
    warmLoads = new WarmLoads(runs, warmth);
  }

  /** Follows how warm all food is, as it is placed now. */
  void follow(Draft draft) {
    warmth.follow(draft.timetable(), draft.begins);
  }

  /**
   * Where a bake is too short or too long for how cold its food goes in, or takes it to be warmer than it is, decides for the start
   * that it has.
   *
   * @return whether any was
   */
  boolean settle(Draft draft, Fitting fitting) {
    boolean settled = false;
    for (Run run : runs.runs()) {
      BakeChoice choice = draft.choice[run.index()];
      int first = run.units().getFirst().index();
      if (choice != null && (off(draft, run, choice) > 0 || !choice.admits(coldest(draft, run)))) {
        int start = startFor(draft, run, choice, fitting);
        settled |= start != Decisions.OPEN && start != draft.starts[first];
        draft.starts[first] = start;
      }
    }
    return settled;
  }

  /** Notes where a bake is too short or too long for how cold its food goes in. */
  void check(Draft draft) {
    for (Run run : runs.runs()) {
      BakeChoice choice = draft.choice[run.index()];
      if (choice != null) {
        draft.isOff(run.index(), off(draft, run, choice));
        draft.overcooked[run.index()] = BakeMinutes.points(booked(draft, run), least(draft, run, choice));
      }
    }
    forecast.check(draft);
    warmLoads.check(draft);
  }

  private static int startFor(Draft draft, Run run, BakeChoice choice, Fitting fitting) {
    int longest = longest(run, least(draft, run, choice));
    return fitting.startFor(run, choice, coldest(draft, run), most(draft, run, choice), longest);
  }

  private static int longest(Run run, int least) {
    Need.Bake bake = run.step().bake();
    return bake == null || least == BakeMinutes.NEVER
        ? least
        : BakeMinutes.longest(bake, run.units().getFirst(), least);
  }

  private static double coldest(Draft draft, Run run) {
    double coldest = Double.MAX_VALUE;
    for (BatchStep unit : run.units()) {
      coldest = Math.min(coldest, draft.begins[unit.index()]);
    }
    return coldest;
  }

  private static int off(Draft draft, Run run, BakeChoice choice) {
    int booked = booked(draft, run);
    int most = most(draft, run, choice);
    return most == BakeMinutes.NEVER
        ? booked
        : Math.max(0, Math.max(most - booked, booked - longest(run, least(draft, run, choice))));
  }

  private static int booked(Draft draft, Run run) {
    return draft.end[run.index()] - draft.start[run.index()];
  }

  /** What the coldest of its batches needs. */
  private static int most(Draft draft, Run run, BakeChoice choice) {
    int most = 0;
    for (BatchStep unit : run.units()) {
      most = Math.max(most, choice.needed().of(draft.begins[unit.index()]));
    }
    return most;
  }

  private static int least(Draft draft, Run run, BakeChoice choice) {
    int least = BakeMinutes.NEVER;
    for (BatchStep unit : run.units()) {
      least = Math.min(least, choice.needed().of(draft.begins[unit.index()]));
    }
    return least;
  }
}
