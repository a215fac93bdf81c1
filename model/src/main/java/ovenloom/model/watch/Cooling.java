package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.life.Track;
import ovenloom.model.measure.Stretch;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.Profile;

/** What was cooked and is kept cools fast enough. What is eaten before the time is over need not. */
record Cooling(Profile profile) implements SafetyRule {

  static final String HELP = "Shallower vessels, moving or colder air, an ice bath, or eat it sooner.";

  @Override
  public List<Concern> check(Track track) {
    List<Concern> all = new ArrayList<>();
    for (Stretch span : Spans.afterCooking(track)) {
      if (span.from() >= Since.perishable(track)) {
        double[] warmest = track.warmest(span.from(), span.to());
        profile.cool().forEach(limit -> check(track, span, warmest, limit, all));
      }
    }
    return all;
  }

  private static void check(Track track, Stretch span, double[] warmest, CoolDown limit, List<Concern> all) {
    int start = 0;
    while (start < warmest.length && warmest[start] > limit.from().inCelsius()) {
      start++;
    }
    CoolDown.TooSlow slow = warmest.length - 1 - start <= limit.minutes() ? null : limit.check(warmest, 0);
    if (slow != null) {
      boolean never = slow.minutes() == Integer.MAX_VALUE;
      String took = never ? "never in this plan" : Words.minutes(slow.minutes());
      all.add(new Concern(Concern.Rule.COOLED, track.at(span.from() - 1).step(), span.from() + start,
          never ? Double.POSITIVE_INFINITY : slow.minutes() - limit.minutes(),
          what(limit, took), limit.source(), HELP));
    }
  }

  /** How long it takes, beside how long it may. */
  static String what(CoolDown limit, String took) {
    return "From " + Words.degrees(limit.from()) + " to " + Words.degrees(limit.to()) + ": " + took
        + ", at most " + Words.minutes(limit.minutes()) + ".";
  }
}
