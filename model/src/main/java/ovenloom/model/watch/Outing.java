package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Profile;

/**
 * What food spends neither cold nor hot from one time that it is so all through to the next.
 *
 * @param hot whether it was cooked or hot before, or else cold
 * @param wasCold whether it was surely cold all through before
 * @param spell counts how often it was cooked when it was cold; what was hot is one spell
 * @param minutes in which it stood out
 * @param waits how many of them it stood about in, nobody working on it
 * @param warmest of any part meanwhile, C
 */
record Outing(boolean hot, boolean wasCold, int spell, List<Integer> minutes, int waits, double warmest) {

  Outing {
    minutes = List.copyOf(minutes);
  }

  static List<Outing> all(Track track, int from, Profile.TimeOnly limit) {
    Clock clock = new Clock(limit);
    for (int minute = from; minute < track.to(); minute++) {
      clock.tick(track.at(minute), minute);
    }
    clock.stop();
    return clock.all;
  }

  /** Runs along a life. */
  private static final class Clock {

    private final Profile.TimeOnly limit;
    private final List<Outing> all = new ArrayList<>();
    private final List<Integer> minutes = new ArrayList<>();
    private boolean hot;
    private boolean wasCold;
    private int spell;
    private int waits;
    private double warmest = Double.NEGATIVE_INFINITY;

    Clock(Profile.TimeOnly limit) {
      this.limit = limit;
    }

    void tick(Leg leg, int minute) {
      boolean isHot = leg.coldest(minute) >= limit.hot().inCelsius();
      boolean isCold = leg.warmest(minute) <= limit.cold().inCelsius();
      if (isHot || isCold) {
        stop();
        hot = isHot;
        wasCold = isCold;
      }
      Store store = leg.store();
      if (Spans.cooks(leg)) {
        spell += hot ? 0 : 1;
        hot = true;
      } else if (store != null && store.holds().compareTo(limit.cold()) <= 0) {
        cooling();
      } else if (!isHot && !isCold && (store == null || store.holds().compareTo(limit.hot()) < 0)) {
        minutes.add(minute);
        waits += leg.waits() ? 1 : 0;
        warmest = Math.max(warmest, leg.warmest(minute));
      }
    }

    /** What was hot cools by another rule, and is cold food from now on. */
    private void cooling() {
      if (hot) {
        forget();
        hot = false;
        wasCold = false;
      }
    }

    void stop() {
      if (!minutes.isEmpty()) {
        all.add(new Outing(hot, wasCold, hot ? 0 : spell, minutes, waits, warmest));
      }
      forget();
    }

    private void forget() {
      minutes.clear();
      waits = 0;
      warmest = Double.NEGATIVE_INFINITY;
    }
  }
}
