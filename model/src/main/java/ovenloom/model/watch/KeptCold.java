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

  static final String HELP = "A colder setting of its dial, or another place.";

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
    double off = off(store, limit);
    if (off > 0) {
      all.add(new Concern(Concern.Rule.KEPT_COLD, leg.step(), leg.when().from(), off, what(store, limit),
          limit.source(), HELP));
    }
  }

  /** How much warmer a place is than it may be, kelvins; 0 where it is cold enough. */
  static double off(Store store, Profile.Limit limit) {
    double off = store.holds().inCelsius() - limit.temperature().inCelsius();
    return off > ROUNDED ? off : 0;
  }

  static String what(Store store, Profile.Limit limit) {
    return "The " + store.name() + " holds " + Words.degrees(store.holds()) + ", at most "
        + Words.degrees(limit.temperature()) + ".";
  }
}
