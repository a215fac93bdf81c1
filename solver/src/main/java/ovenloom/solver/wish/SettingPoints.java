package ovenloom.solver.wish;

import ovenloom.model.menu.Wish;
import ovenloom.solver.place.Run;

/** A dish is baked at the mark nearest to the one that was written. */
final class SettingPoints implements WishPoints {

  @Override
  public Wish wish() {
    return Wish.SETTING;
  }

  @Override
  public long of(Outcome outcome) {
    long points = 0;
    for (Run run : outcome.draft.runs().runs()) {
      points += outcome.draft.settingPoints(run.index());
    }
    return points;
  }
}
