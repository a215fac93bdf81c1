package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Profile;

/**
 * How long food is left out between hot and cold, summed over its whole life. What stands in a place that is cold or hot enough, or cooks, is not
 * left out, however warm it still is there: how fast it cools is a rule of its own. A part between the limits is enough, since what grows there
 * spoils the rest: the edge of a roast is in danger before its middle is.
 */
record LeftOut(Profile profile, Kitchen kitchen) implements SafetyRule {

  static final String HELP = "Keep it for longer in a place that is cold or hot enough.";

  @Override
  public List<Concern> check(Track track) {
    List<Concern> all = new ArrayList<>();
    for (Profile.OutOfTemperature limit : profile.out()) {
      int most = most(limit, kitchen);
      int spent = 0;
      int over = 0;
      for (int minute = Since.perishable(track); minute < track.to(); minute++) {
        spent += isLeftOut(track, minute, limit) ? 1 : 0;
        over = spent == most + 1 && over == 0 ? minute : over;
      }
      if (spent > most) {
        all.add(new Concern(Concern.Rule.LEFT_OUT, track.at(over).step(), over, spent - most,
            what(limit, Words.minutes(spent) + " in all", most), limit.source(), HELP));
      }
    }
    return all;
  }

  /** Minutes that it may be in the air of a kitchen. */
  static int most(Profile.OutOfTemperature limit, Kitchen kitchen) {
    boolean hot = kitchen.room().compareTo(limit.hotAir()) > 0;
    return hot ? limit.then() : limit.minutes();
  }

  static String what(Profile.OutOfTemperature limit, String spent, int most) {
    return "Neither kept cold nor hot, between " + Words.degrees(limit.from()) + " and "
        + Words.degrees(limit.to()) + " for " + spent + ", at most " + Words.minutes(most) + ".";
  }

  private static boolean isLeftOut(Track track, int minute, Profile.OutOfTemperature limit) {
    Leg leg = track.at(minute);
    Store store = leg.store();
    boolean kept = store != null
        && (store.holds().compareTo(limit.from()) <= 0 || store.holds().compareTo(limit.to()) >= 0);
    return !kept && !Spans.cooks(leg) && leg.warmest(minute) > limit.from().inCelsius()
        && leg.coldest(minute) < limit.to().inCelsius();
  }
}
