package ovenloom.solver.place;

import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/** Looks, once all is placed, how warm each bake's food goes in, and whether its minutes are enough and not too many. */
final class ColdStarts {

  private final Runs runs;
  private final MeanWarmth warmth;
  private final double[] begins;

  ColdStarts(Runs runs) {
    this.runs = runs;
    warmth = new MeanWarmth(runs.minutes().cards());
    begins = new double[runs.work().steps().size()];
  }

  void check(Draft draft) {
    warmth.follow(draft.timetable(), begins);
    for (Run run : runs.runs()) {
      BakeChoice choice = draft.choice[run.index()];
      if (choice != null) {
        check(draft, run, choice);
      }
    }
  }

  private void check(Draft draft, Run run, BakeChoice choice) {
    Need.Bake bake = run.step().bake();
    int most = 0;
    int least = Integer.MAX_VALUE;
    for (BatchStep unit : run.units()) {
      int needed = choice.needed().of(begins[unit.index()]);
      most = Math.max(most, needed);
      least = Math.min(least, needed);
    }
    int booked = draft.end[run.index()] - draft.start[run.index()];
    int longest = bake == null || least == BakeMinutes.NEVER ? Integer.MAX_VALUE
        : BakeMinutes.longest(bake, run.units().getFirst(), least);
    if (booked < most) {
      draft.fallsShort(run.index(), most == BakeMinutes.NEVER ? booked : most - booked);
    } else if (booked > longest) {
      draft.fallsShort(run.index(), booked - longest);
    }
    draft.overcooked[run.index()] = BakeMinutes.points(booked, least);
  }

}
