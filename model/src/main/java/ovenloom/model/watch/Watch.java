package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ovenloom.model.life.Life;
import ovenloom.model.life.Track;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.model.safety.Profile;

/** Holds the predicted temperatures of a plan's food against the event's safety profile. */
public final class Watch {

  private Watch() {}

  /**
   * What is predicted to break a limit, in the order of time; each once a step, as bad as it gets.
   *
   * @param lives of the plan, one at least: as food may cool faster or more slowly
   */
  public static List<Concern> over(Plan plan, Life... lives) {
    List<SafetyRule> rules = rules(plan.event());
    List<Concern> all = new ArrayList<>();
    for (Life life : lives) {
      for (Track track : life.tracks()) {
        rules.forEach(rule -> rule.check(track).forEach(each -> keepTheWorst(each, all)));
      }
    }
    new Roasted(plan, lives[0].work()).concerns().forEach(each -> keepTheWorst(each, all));
    return all.stream().sorted(Comparator.comparingInt(Concern::minute)).toList();
  }

  /** By when cooked food must have cooled by the limits of a profile, in the order of time. */
  public static List<Deadline> cooling(Profile profile, Life life) {
    Cooling cooling = new Cooling(profile);
    return life.tracks()
        .stream()
        .flatMap(track -> cooling.deadlines(track).stream())
        .sorted(Comparator.comparingInt(Deadline::by))
        .toList();
  }

  private static void keepTheWorst(Concern concern, List<Concern> all) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).isLike(concern)) {
        all.set(i, concern.off() > all.get(i).off() ? concern : all.get(i));
        return;
      }
    }
    all.add(concern);
  }

  private static List<SafetyRule> rules(Event event) {
    Profile profile = Profile.of(event.rules());
    return List.of(
        new CookedThrough(profile),
        new HeatedAgain(profile),
        new Cooling(profile),
        new LeftOut(profile, event.kitchen()),
        new TimeOnly(profile),
        new KeptHot(profile),
        new KeptCold(profile),
        new Thawing(profile));
  }
}
