package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.HoldTime;
import ovenloom.model.safety.Profile;
import ovenloom.model.safety.Source;

/** What was cooked, cooled and is heated again gets hot enough for long enough all through, and without delay. */
record HeatedAgain(Profile profile) implements SafetyRule {

  /** Below this, C, food was cooled rather than taken from one heat to the next. Common practice. */
  private static final double COOLED = 10;

  @Override
  public List<Concern> check(Track track) {
    List<Concern> all = new ArrayList<>();
    List<Leg> cooked = track.legs().stream().filter(Spans::cooks).toList();
    if (cooked.isEmpty() || !isCooled(track, cooked.getFirst(), cooked.getLast())) {
      return all;
    }
    Leg last = cooked.getLast();
    double[] coldest = CookedThrough.coldest(track, last);
    for (Profile.Reheat reheat : profile.reheat()) {
      if (!CookedThrough.isMet(reheat.hold(), track, last)) {
        all.add(CookedThrough.concern(last, coldest, reheat.hold(), "Heated again to"));
      } else if (reheat.within() != null) {
        within(track, last, reheat.hold(), reheat.within(), all);
      }
    }
    return all;
  }

  private static boolean isCooled(Track track, Leg first, Leg last) {
    return IntStream.rangeClosed(first.when().to(), last.when().from())
        .filter(minute -> !Spans.cooks(track.at(minute)))
        .anyMatch(minute -> isInTheCold(track.at(minute)) || track.food(minute).mean() < COOLED);
  }

  private static boolean isInTheCold(Leg leg) {
    Store store = leg.store();
    return store != null && store.kind().isCold();
  }

  /** From when its coldest part is no longer cold, on the heat, to when that is as hot as the least that will do. */
  private static void within(Track track, Leg last, HoldTime hold, Profile.Within limit, List<Concern> all) {
    double target = hold.rows().getFirst().temperature().inCelsius();
    int begins = heating(track, last);
    int from = begins;
    int minute = begins;
    while (minute < track.to()
        && (minute < last.when().from() || track.at(minute).coldest(minute) < target)) {
      from = track.at(minute).coldest(minute) <= limit.from().inCelsius() ? minute : from;
      minute++;
    }
    int took = minute - from;
    if (took > limit.minutes()) {
      all.add(concern(last, from, took, hold, limit));
    }
  }

  /** When the heat begins that ends with a leg, be it of several stages or steps. */
  private static int heating(Track track, Leg last) {
    int from = last.when().from();
    for (Leg leg : track.legs().reversed()) {
      from = Spans.cooks(leg) && leg.when().to() == from ? leg.when().from() : from;
    }
    return from;
  }

  private static Concern concern(Leg last, int from, int took, HoldTime hold, Profile.Within limit) {
    Source source = hold.source();
    return new Concern(Concern.Rule.REHEATED, last.step(), from, took - limit.minutes(),
        "From " + Words.degrees(limit.from()) + " to " + Words.degrees(hold.rows().getFirst().temperature())
            + ": " + Words.minutes(took) + ", at most " + Words.minutes(limit.minutes()) + ".",
        source, "Hotter, shallower, or on a burner first.");
  }
}
