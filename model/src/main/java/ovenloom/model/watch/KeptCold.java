package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Profile;

/** What is kept in a fridge is in one that is cold enough. */
record KeptCold(Profile profile) implements SafetyRule {

  /** Written in whole degrees Fahrenheit, and as often in whole degrees Celsius: 41 F is called 5 C. */
  private static final double ROUNDED = 0.05;

  private static final String HELP = "A colder setting of its dial, or another place.";

  @Override
  public List<Concern> check(Track track) {
    List<Concern> all = new ArrayList<>();
    for (Leg leg : track.legs()) {
      Store store = leg.store();
      if (store != null && store.kind().isCold() && leg.when().to() > Since.perishable(track)) {
        profile.cold().forEach(limit -> check(leg, store, limit, all));
      }
    }
    return all;
  }

  private static void check(Leg leg, Store store, Profile.Limit limit, List<Concern> all) {
    double off = store.holds().inCelsius() - limit.temperature().inCelsius();
    if (off > ROUNDED) {
      all.add(new Concern(Concern.Rule.KEPT_COLD, leg.step(), leg.when().from(), off,
          "The " + store.name() + " holds " + Words.degrees(store.holds()) + ", at most "
              + Words.degrees(limit.temperature()) + ".",
          limit.source(), HELP));
    }
  }
}
