package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ovenloom.model.heat.Ice;
import ovenloom.model.life.Track;
import ovenloom.model.measure.Stretch;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.Profile;

/** What was cooked and is kept cools fast enough. What is eaten before the time is over need not. */
record Cooling(Profile profile) implements SafetyRule {

  static final String HELP = "Shallower vessels, no lid, moving or colder air, an ice bath, or eat it sooner.";

  @Override
  public List<Concern> check(Track track) {
    return deadlines(track).stream().flatMap(deadline -> check(deadline).stream()).toList();
  }

  /** By when food of one way must have cooled; none for what is eaten, heated again or frozen by then. */
  List<Deadline> deadlines(Track track) {
    List<Deadline> all = new ArrayList<>();
    for (Stretch span : Spans.afterCooking(track)) {
      if (span.from() >= Since.perishable(track)) {
        double[] warmest = track.warmest(span.from(), span.to());
        profile.cool()
            .stream()
            .map(limit -> new Deadline(limit, track, span,
                span.from() + start(warmest, limit) + limit.minutes()))
            .filter(deadline -> deadline.by() < span.to() && deadline.warmest(deadline.by()) > Ice.MELTS
                && deadline.warmest(deadline.from()) > deadline.limit().to().inCelsius())
            .forEach(all::add);
      }
    }
    return all;
  }

  private static int start(double[] warmest, CoolDown limit) {
    int start = 0;
    while (start < warmest.length && warmest[start] > limit.from().inCelsius()) {
      start++;
    }
    return start;
  }

  private static Optional<Concern> check(Deadline deadline) {
    CoolDown limit = deadline.limit();
    Stretch span = deadline.span();
    CoolDown.TooSlow slow = limit.check(deadline.track().warmest(deadline.from(), span.to()), 0);
    if (slow == null) {
      return Optional.empty();
    }
    boolean never = slow.minutes() == Integer.MAX_VALUE;
    String took = never ? "never in this plan" : Words.minutes(slow.minutes());
    return Optional.of(new Concern(Concern.Rule.COOLED, deadline.step(span.from() - 1), deadline.from(),
        never ? Double.POSITIVE_INFINITY : slow.minutes() - limit.minutes(), what(limit, took),
        limit.source(), HELP));
  }

  /** How long it takes, beside how long it may. */
  static String what(CoolDown limit, String took) {
    return "From " + Words.degrees(limit.from()) + " to " + Words.degrees(limit.to()) + ": " + took
        + ", at most " + Words.minutes(limit.minutes()) + ".";
  }
}
