package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Reach;
import ovenloom.model.life.RoastOvens;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Profile;

/**
 * What is sure not to be safe before there is a plan. It claims only what {@link Watch}, or the days food is kept, would find in every plan
 * that keeps all other rules; where that is not certain it says nothing, and the plan is judged.
 */
public final class Beforehand {

  /** Of larger menus nothing is said before the plan is judged: it would take too long. */
  private static final int MOST_STEPS = 600;

  private Beforehand() {}

  /** What no plan can avoid; each once a step, by the limit it misses by most. */
  public static List<Unavoidable> of(Work work) {
    if (work.steps().size() > MOST_STEPS) {
      return List.of();
    }
    Event event = work.event();
    Profile profile = Profile.of(event.rules());
    Cards cards = new Cards(work);
    Reach reach = new Reach(cards);
    Ways ways = new Ways(work, reach);
    Gaps gaps = new Gaps(work, reach);
    List<Foregone> rules = List.of(
        new NeverCooked(profile, ways, reach, NeverCooked.AT_MOST),
        new NeverRoasted(new RoastOvens(profile, cards), event.kitchen()),
        new NeverCold(profile, ways, reach, gaps),
        new NeverCooled(profile, ways, reach),
        new NeverHot(profile, ways, reach, gaps),
        new OutTooLong(profile, ways, reach, gaps, event),
        new TooManyDays(profile, ways, work));
    return found(rules, work);
  }

  /** What only a bake that is longer than it needs could avoid, in the same way. */
  public static List<Unavoidable> unlessOverdone(Work work) {
    if (work.steps().size() > MOST_STEPS) {
      return List.of();
    }
    Reach reach = new Reach(new Cards(work), false);
    return found(List.of(new NeverCooked(Profile.of(work.event().rules()), new Ways(work, reach), reach,
        NeverCooked.NO_LONGER)), work);
  }

  private static List<Unavoidable> found(List<Foregone> rules, Work work) {
    List<Unavoidable> all = new ArrayList<>();
    for (Foregone rule : rules) {
      for (BatchStep step : work.steps()) {
        if (step.dish().food()) {
          rule.find(step).forEach(each -> keepTheWorst(each, all));
        }
      }
    }
    return List.copyOf(all);
  }

  private static void keepTheWorst(Unavoidable one, List<Unavoidable> all) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).isLike(one)) {
        all.set(i, one.off() > all.get(i).off() ? one : all.get(i));
        return;
      }
    }
    all.add(one);
  }
}
