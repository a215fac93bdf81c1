package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Reach;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.safety.Profile;

/** What must wait so long that it keeps only in hot places gets too cool in each of them, however hot it goes in. */
record NeverHot(Profile profile, Ways ways, Reach reach, Gaps gaps) implements Foregone {

  @Override
  public List<Unavoidable> find(BatchStep step) {
    List<Unavoidable> all = new ArrayList<>();
    if (!ways.isPerishable(step) || !ways.areFollowed(step)) {
      return all;
    }
    List<Store> hot = gaps.hot(step).toList();
    for (Gaps.Gap gap : gaps.of(step)) {
      int elsewhere = Math.max(Math.max(gap.onTheCounter(), gap.inPlace()),
          Keeps.FREE_ON_THE_COUNTER + Gaps.longest(step, gaps.cold(step)));
      if (gap.least() > elsewhere && !hot.isEmpty()) {
        profile.hot().forEach(limit -> tooCool(step, gap, hot, limit, all));
      }
    }
    return all;
  }

  private void tooCool(BatchStep step, Gaps.Gap gap, List<Store> hot, Profile.Limit limit,
      List<Unavoidable> all) {
    double least = limit.temperature().inCelsius();
    double most = hot.stream()
        .mapToDouble(store -> reach.mean(step, reach.leaves(step), reach.in(step, store).dry(), gap.least()))
        .max()
        .orElseThrow();
    if (most < least) {
      all.add(new Unavoidable(gap.after(), Gaps.keys(step, gap), least - most,
          KeptHot.what(most, hot.getFirst().name(), limit), limit.source(), KeptHot.HELP));
    }
  }
}
