package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.Spread;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;

/** Plans for tests, put together run by run; nothing is added that a test does not say. */
public final class Plans {

  private static final Score NOT_COUNTED = new Score(0, Map.of(), Map.of(), 0, 0);

  private final Event event;
  private final List<Placement> runs = new ArrayList<>();
  private final List<Stay> stays = new ArrayList<>();
  private final List<OvenLog> ovens = new ArrayList<>();
  private final List<Wash> washes = new ArrayList<>();
  private final List<Spread> layouts = new ArrayList<>();
  private Score score = NOT_COUNTED;

  private Plans(Event event) {
    this.event = event;
  }

  public static Plans aPlanFor(Events event) {
    return new Plans(event.event());
  }

  public static Plans aPlanFor(Event event) {
    return new Plans(event);
  }

  public Plans with(Runs run) {
    runs.add(run.run());
    return this;
  }

  public Plans with(Waits stay) {
    stays.add(stay.stay());
    return this;
  }

  public Plans with(Logs log) {
    ovens.add(log.log());
    return this;
  }

  public Plans with(Spread layout) {
    layouts.add(layout);
    return this;
  }

  /** One cook washes so many from then on, for as long as the kitchen says. */
  public Plans wash(String vessel, int count, String from, String cook) {
    var kind = event.kitchen().vessel(vessel);
    int start = Clock.at(from);
    return with(new Wash(vessel, count, new Stretch(start, start + (kind == null ? 5 : kind.wash())), cook));
  }

  public Plans with(Wash wash) {
    washes.add(wash);
    return this;
  }

  public Plans score(Score wanted) {
    score = wanted;
    return this;
  }

  public Plan plan() {
    runs.sort(Comparator.comparingInt(run -> run.when().from()));
    stays.sort(Comparator.comparingInt(Plans::start));
    washes.sort(Comparator.comparingInt(wash -> wash.when().from()));
    return new Plan(event, List.of(), runs, stays, ovens, washes, layouts, score);
  }

  private static int start(Stay stay) {
    return stay.parts().isEmpty() ? Integer.MAX_VALUE : stay.parts().getFirst().when().from();
  }

  Case underAudit() {
    return new Case(new Cards(Work.of(event)), plan());
  }

  /** What a rule finds in it. */
  List<Break> heldAgainst(KitchenRule rule) {
    return rule.check(underAudit());
  }
}
