package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;

/** Nothing begins before the calendar does, and nothing goes on after it. */
record InTheCalendar() implements KitchenRule {

  @Override
  public String id() {
    return "in the calendar";
  }

  @Override
  public String sentence() {
    return "Nothing begins before the calendar does, and nothing goes on after it.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      check(plan.event(), plan.name(run), run.when(), breaks);
    }
    for (Stay stay : plan.plan().stays()) {
      stay.parts().forEach(part -> check(plan.event(), "waiting of " + plan.name(stay), part.when(), breaks));
    }
    plan.plan()
        .ovens()
        .forEach(log -> log.spans().forEach(span -> check(plan.event(), log.oven(), span.when(), breaks)));
    plan.plan()
        .washes()
        .forEach(wash -> check(plan.event(), "washing of " + wash.vessel(), wash.when(), breaks));
    return breaks;
  }

  private void check(Event event, String who, Stretch when, List<Break> breaks) {
    int early = event.from() - when.from();
    int late = when.to() - event.to();
    if (early > 0) {
      breaks.add(minutes(who, when, early, "it begins " + early + " min before the calendar"));
    }
    if (late > 0) {
      breaks.add(minutes(who, when, late, "it ends " + late + " min after the calendar"));
    }
  }

  private Break minutes(String who, Stretch when, int off, String what) {
    return Break.of(this, List.of(who), when, off, Break.Unit.MINUTES, what);
  }
}
