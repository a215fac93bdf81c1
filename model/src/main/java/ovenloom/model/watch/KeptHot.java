package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Profile;

/** What is kept hot in a hot place stays hot enough to be safe. */
record KeptHot(Profile profile) implements SafetyRule {

  private static final String HELP = "A hotter place, or less time in it.";

  @Override
  public List<Concern> check(Track track) {
    List<Concern> all = new ArrayList<>();
    for (Leg leg : track.legs()) {
      Store store = leg.store();
      boolean hot = store != null && store.kind() == Store.Kind.HOT;
      if (hot && leg.waits() && leg.when().from() >= Since.perishable(track)) {
        profile.hot().forEach(limit -> check(leg, limit, all));
      }
    }
    return all;
  }

  private static void check(Leg leg, Profile.Limit limit, List<Concern> all) {
    for (int minute = leg.when().from(); minute <= leg.when().to(); minute++) {
      double mean = leg.at(minute).mean();
      if (mean < limit.temperature().inCelsius()) {
        all.add(new Concern(Concern.Rule.KEPT_HOT, leg.step(), minute,
            "Predicted " + Math.round(mean) + " C in the " + leg.where() + ", at least "
                + Words.degrees(limit.temperature()) + ".",
            limit.source(), HELP));
        return;
      }
    }
  }
}
