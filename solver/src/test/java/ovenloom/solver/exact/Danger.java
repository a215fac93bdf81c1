package ovenloom.solver.exact;

import java.util.List;
import ovenloom.model.heat.Ice;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.safety.CoolDown;
import ovenloom.model.safety.Profile;

/** What a safety profile says of food in one place after the other, minute by minute. */
record Danger(Profile profile, Kitchen kitchen) {

  /** A hot place's edge may be too cool for so many minutes as food comes in. */
  private static final int TO_GET_WARM_AGAIN = 15;

  /** The most minutes between hot and cold in all, or more than anything takes. */
  int mostLeftOut() {
    return profile.out()
        .stream()
        .mapToInt(
            limit -> kitchen.room().compareTo(limit.hotAir()) > 0 ? limit.then() : limit.minutes())
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** Whether food is between hot and cold in a minute, and in no place that is either. */
  boolean isLeftOut(Leg leg, int minute) {
    if (!leg.waits() && leg.step().step().cooks()) {
      return false;
    }
    Store store = leg.store();
    return profile.out()
        .stream()
        .anyMatch(limit -> (store == null || (store.holds().compareTo(limit.from()) > 0
            && store.holds().compareTo(limit.to()) < 0))
            && leg.warmest(minute) > limit.from().inCelsius()
            && leg.coldest(minute) < limit.to().inCelsius());
  }

  /** Whether food in a hot place stays hot there. */
  boolean isKeptHot(Leg leg) {
    return profile.hot().stream().allMatch(limit -> isKeptHot(leg, limit.temperature().inCelsius()));
  }

  private static boolean isKeptHot(Leg leg, double least) {
    int cool = 0;
    for (int minute = leg.when().from(); minute <= leg.when().to(); minute++) {
      cool = leg.coldest(minute) < least ? cool + 1 : 0;
      if (cool > TO_GET_WARM_AGAIN || leg.at(minute).mean() < least) {
        return false;
      }
    }
    return true;
  }

  /** Whether food that comes off the heat is cool in time, or on the heat again before that is over. */
  boolean coolsInTime(double[] warmest) {
    return profile.cool().stream().allMatch(limit -> coolsInTime(warmest, limit));
  }

  private static boolean coolsInTime(double[] warmest, CoolDown limit) {
    int hot = 0;
    while (hot < warmest.length && warmest[hot] > limit.from().inCelsius()) {
      hot++;
    }
    int by = hot + limit.minutes();
    return by >= warmest.length - 1 || warmest[by] <= Ice.MELTS
        || warmest[hot] <= limit.to().inCelsius() || limit.check(warmest, 0) == null;
  }

  /** Whether food of these tags that gets so hot in its coldest part, as it comes off the heat, is cooked, and heated again. */
  boolean isHotThrough(List<String> tags, double coldest) {
    return profile.cook()
        .stream()
        .filter(cook -> tags.contains(cook.food()))
        .allMatch(cook -> cook.hold().isMetInAMinute(coldest))
        && profile.reheat().stream().allMatch(reheat -> reheat.hold().isMetInAMinute(coldest));
  }

  /** Minutes after which what is cooked and kept must have cooled, at the least. */
  int soonestToBeCool() {
    return profile.cool().stream().mapToInt(CoolDown::minutes).min().orElse(Integer.MAX_VALUE);
  }

  /** Minutes for which it may stand out by the clock, at the least; none where it may only once. */
  int shortestByTheClock() {
    return profile.timeOnly()
        .stream()
        .mapToInt(limit -> limit.once() ? 0 : Math.min(limit.afterHot(), limit.afterCold()))
        .min()
        .orElse(Integer.MAX_VALUE);
  }
}
