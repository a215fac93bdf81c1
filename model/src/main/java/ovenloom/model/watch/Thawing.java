package ovenloom.model.watch;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Profile;

/**
 * What is frozen thaws in the cold or on the heat, not on the counter: a quarter of an hour of handling aside, in all its life (common
 * practice). What is eaten frozen does not thaw, and as it is served everything may.
 */
record Thawing(Profile profile) implements SafetyRule {

  private static final int HANDLING = 15;

  @Override
  public List<Concern> check(Track track) {
    int served = track.legs()
        .stream()
        .filter(leg -> leg.step().step().serve() || leg.where().equals(Leg.AT_THE_TABLE))
        .mapToInt(leg -> leg.when().from())
        .findFirst()
        .orElse(track.to());
    if (track.food(served).isFrozen()) {
      return List.of();
    }
    return profile.thawed()
        .stream()
        .map(limit -> concern(track, limit, inTheWarm(track, limit, served)))
        .flatMap(Optional::stream)
        .toList();
  }

  private static int[] inTheWarm(Track track, Profile.Limit limit, int served) {
    return IntStream.range(Math.max(track.from(), Since.perishable(track)), served)
        .filter(minute -> track.at(minute).isThawing(minute) && isWarm(track.at(minute), limit))
        .toArray();
  }

  private static boolean isWarm(Leg leg, Profile.Limit limit) {
    Store store = leg.store();
    boolean cold = store != null && KeptCold.off(store, limit) == 0;
    return !cold && !Spans.cooks(leg);
  }

  private static Optional<Concern> concern(Track track, Profile.Limit limit, int[] minutes) {
    if (minutes.length <= HANDLING) {
      return Optional.empty();
    }
    Leg leg = track.at(minutes[0]);
    return Optional.of(new Concern(Concern.Rule.THAWED, leg.step(), minutes[0], minutes.length - HANDLING,
        "Thaws for " + Words.minutes(minutes.length) + " in the warm (" + leg.where() + "), at most "
            + Words.degrees(limit.temperature()) + " is cold enough.",
        limit.source(), "Thaw it in the fridge, from the day before, or cook it frozen."));
  }
}
