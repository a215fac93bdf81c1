package ovenloom.solver.place;

import ovenloom.model.menu.Link;
import ovenloom.solver.timeline.Timeline;

/**
 * Finds when a run has to end so that it follows right after what it takes on, where that is not to wait: before any of them is
 * placed, the run and what feeds it are asked until they agree.
 */
final class StraightOn {

  private static final int TRIES_TO_AGREE = 5;

  private final Runs runs;
  private final Draft draft;
  private final Fitting fitting;
  private final Spots spots;
  private final Bonds bonds;

  StraightOn(Runs runs, Draft draft, Fitting fitting, Spots spots, Bonds bonds) {
    this.runs = runs;
    this.draft = draft;
    this.fitting = fitting;
    this.spots = spots;
    this.bonds = bonds;
  }

  /** The latest end of a run, not after a moment; the moment itself, if all that feeds it may wait or finds no room. */
  int latestEnd(Run run, int notAfter, Decisions decisions) {
    int end = notAfter;
    for (Tie tie : bonds.before(run.index())) {
      boolean isToFeed = tie.link().kind() == Link.Kind.FOOD && !draft.placed[tie.earlier()];
      if (isToFeed && isTakenAtOnce(tie.earlier(), decisions)) {
        end = agreed(run, tie, end, decisions);
      }
    }
    return end;
  }

  private boolean isTakenAtOnce(int feeder, Decisions decisions) {
    for (int wait : bonds.waits(feeder)) {
      if (spots.isTakenAtOnce(wait, decisions)) {
        return true;
      }
    }
    return false;
  }

  private int agreed(Run run, Tie tie, int notAfter, Decisions decisions) {
    Run feeder = runs.runs().get(tie.earlier());
    int after = tie.link().least() + fitting.leastMinutes(run);
    int end = notAfter;
    for (int tries = 0; tries < TRIES_TO_AGREE; tries++) {
      int fits = fits(run, end, decisions);
      int isFed = fits == Timeline.NONE ? Timeline.NONE
          : fits(feeder, latestEnd(feeder, fits - after, decisions), decisions);
      if (isFed == Timeline.NONE) {
        return notAfter;
      }
      if (isFed + after >= fits) {
        return fits;
      }
      end = isFed + after;
    }
    return end;
  }

  private int fits(Run run, int notAfter, Decisions decisions) {
    int step = run.units().getFirst().index();
    return fitting.latestEnd(run, notAfter, draft.starts[step], decisions.bake(step));
  }
}
