package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Profile;

/**
 * What is kept hot in a hot place stays hot enough to be safe, in its coldest part. Its edge, which loses first what the place gives back, has a
 * quarter of an hour to get warm again when it comes in: what stirring would mend at once is no danger yet. Common practice.
 */
record KeptHot(Profile profile) implements SafetyRule {

  static final String HELP = "A hotter place, or less time in it.";

  private static final int TO_GET_WARM_AGAIN = 15;

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
    double least = limit.temperature().inCelsius();
    int from = tooCool(leg, least);
    if (from <= leg.when().to()) {
      double coldest = IntStream.rangeClosed(from, leg.when().to())
          .mapToDouble(leg::coldest)
          .min()
          .orElseThrow();
      all.add(new Concern(Concern.Rule.KEPT_HOT, leg.step(), from, least - coldest,
          what(coldest, leg.where(), limit), limit.source(), HELP));
    }
  }

  static String what(double coldest, String where, Profile.Limit limit) {
    return "Predicted " + Math.round(coldest) + " C in its coldest part in the " + where + ", at least "
        + Words.degrees(limit.temperature()) + ".";
  }

  /** From which minute on; one after its end if it is always hot enough. */
  private static int tooCool(Leg leg, double least) {
    int run = 0;
    for (int minute = leg.when().from(); minute <= leg.when().to(); minute++) {
      run = leg.coldest(minute) < least ? run + 1 : 0;
      if (leg.at(minute).mean() < least || run > TO_GET_WARM_AGAIN) {
        return minute - Math.max(0, run - 1);
      }
    }
    return leg.when().to() + 1;
  }
}
