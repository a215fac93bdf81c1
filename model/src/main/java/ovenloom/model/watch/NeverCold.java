package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Reach;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.Profile;

/** What must be in a fridge, to chill or since it keeps so long nowhere else, finds none that is cold enough. */
record NeverCold(Profile profile, Ways ways, Reach reach, Gaps gaps) implements Foregone {

  @Override
  public List<Unavoidable> find(BatchStep step) {
    List<Unavoidable> all = new ArrayList<>();
    if (ways.isPerishable(step) && ways.areFollowed(step)) {
      List<Store> shelves = reach.shelves(step);
      if (shelves.stream().allMatch(store -> store.kind().isCold())) {
        tooWarm(step, List.of("cold"), shelves, all);
      }
      for (Gaps.Gap gap : gaps.of(step)) {
        int elsewhere = Math.max(Math.max(gap.onTheCounter(), gap.inPlace()),
            Gaps.longest(step, gaps.hot(step)));
        if (gap.least() > elsewhere) {
          tooWarm(gap.after(), Gaps.keys(step, gap), gaps.cold(step).toList(), all);
        }
      }
    }
    return all;
  }

  private void tooWarm(BatchStep step, List<String> keys, List<Store> stores, List<Unavoidable> all) {
    for (Profile.Limit limit : profile.cold()) {
      Stream<Store> cold = stores.stream().filter(store -> KeptCold.off(store, limit) == 0);
      if (!stores.isEmpty() && cold.findAny().isEmpty()) {
        Store first = stores.getFirst();
        all.add(new Unavoidable(step, keys, KeptCold.off(first, limit), KeptCold.what(first, limit),
            limit.source(), KeptCold.HELP));
      }
    }
  }
}
