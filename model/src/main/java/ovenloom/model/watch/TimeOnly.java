package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.life.Track;
import ovenloom.model.safety.Profile;

/**
 * What stands out is eaten, or heated or chilled again, before its time is over, where a profile lets the clock be its only control. Each time
 * counts from when it was last cold or hot enough all through; where nothing says how it began, from its first step. What was hot and goes
 * into the cold is cooling, which is a rule of its own.
 */
record TimeOnly(Profile profile) implements SafetyRule {

  /** Minutes about that are a part of the work and no time of display. Common practice. */
  private static final int AT_WORK = 15;

  static final String HELP = "Eat it sooner, or keep it for longer in a place that is cold or hot enough.";

  @Override
  public List<Concern> check(Track track) {
    List<Concern> all = new ArrayList<>();
    for (Profile.TimeOnly limit : profile.timeOnly()) {
      List<Outing> outings = Outing.all(track, Since.perishable(track), limit);
      outings.forEach(outing -> tooLong(track, outing, limit, all));
      if (limit.once()) {
        again(track, outings, limit, all);
      }
    }
    return all;
  }

  private static void tooLong(Track track, Outing outing, Profile.TimeOnly limit, List<Concern> all) {
    int most = most(outing, limit);
    int spent = outing.minutes().size();
    if (spent > most) {
      int over = outing.minutes().get(most);
      all.add(new Concern(Concern.Rule.LEFT_OUT, track.at(over).step(), over, spent - most,
          "Stands out for " + Words.minutes(spent) + " since it was " + (outing.hot() ? "hot" : "cold")
              + ", at most " + Words.minutes(most) + ".",
          limit.source(), HELP));
    }
  }

  private static int most(Outing outing, Profile.TimeOnly limit) {
    Profile.Cool cool = limit.cool();
    if (cool != null && outing.wasCold() && outing.warmest() <= cool.most().inCelsius()) {
      return cool.minutes();
    }
    return outing.hot() ? limit.afterHot() : limit.afterCold();
  }

  private static void again(Track track, List<Outing> outings, Profile.TimeOnly limit, List<Concern> all) {
    for (int i = 0; i < outings.size(); i++) {
      Outing now = outings.get(i);
      boolean before = outings.subList(0, i)
          .stream()
          .anyMatch(each -> each.hot() == now.hot() && each.spell() == now.spell() && each.waits() > AT_WORK);
      if (before && now.waits() > AT_WORK) {
        int from = now.minutes().getFirst();
        all.add(new Concern(Concern.Rule.LEFT_OUT, track.at(from).step(), from, now.waits(),
            "Stands out a second time since it was " + (now.hot() ? "hot" : "cold") + ", for "
                + Words.minutes(now.minutes().size()) + "; once is all.",
            limit.source(), HELP));
      }
    }
  }
}
