package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.HoldTime;
import ovenloom.model.safety.Profile;

/** Raw food gets hot enough for long enough all through, on the heat or after it. */
record CookedThrough(Profile profile) implements SafetyRule {

  static final String HELP = "Longer, hotter, or from warmer; a higher \"core:\" on the card.";

  @Override
  public List<Concern> check(Track track) {
    List<Concern> all = new ArrayList<>();
    Leg first = track.legs().stream().filter(Spans::cooks).findFirst().orElse(null);
    if (first != null) {
      raw(track, first, all);
    }
    return all;
  }

  private void raw(Track track, Leg first, List<Concern> all) {
    double[] coldest = coldest(track, first);
    Set<String> tags = track.legs()
        .stream()
        .takeWhile(leg -> leg.when().from() <= first.when().from())
        .flatMap(leg -> leg.step().dish().tags().stream())
        .collect(Collectors.toSet());
    for (Profile.Cook cook : profile.cook()) {
      if (tags.contains(cook.food()) && !isMet(cook.hold(), track, first)) {
        all.add(concern(first, coldest, cook.hold(), "Cooked to"));
      }
    }
  }

  /** On a leg or after it; or as it is probed, for a minute, before it comes off the heat. */
  static boolean isMet(HoldTime hold, Track track, Leg leg) {
    return hold.isMet(coldest(track, leg)) || hold.isMetInAMinute(leg.coldest(leg.when().to()));
  }

  /** From the beginning of a leg on. */
  static double[] coldest(Track track, Leg leg) {
    return track.coldest(leg.when().from(), track.to());
  }

  static Concern concern(Leg leg, double[] coldest, HoldTime hold, String what) {
    double most = Double.NEGATIVE_INFINITY;
    for (double each : coldest) {
      most = Math.max(most, each);
    }
    return new Concern(Concern.Rule.COOKED, leg.step(), leg.when().to(),
        hold.rows().getLast().temperature().inCelsius() - most,
        what + " " + Math.round(most) + " C, at least " + least(hold) + ".", hold.source(), HELP);
  }

  /** The hottest that a table asks for, in words. */
  static String least(HoldTime hold) {
    HoldTime.Row row = hold.rows().getLast();
    return Words.degrees(row.temperature()) + (row.seconds() == 0 ? "" : " for " + row.seconds() + " s")
        + " or as long at less as the table says";
  }
}
