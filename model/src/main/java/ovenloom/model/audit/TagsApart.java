package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;

/** What must be kept apart is never in one oven at one time. */
record TagsApart() implements KitchenRule {

  @Override
  public String id() {
    return "tags apart";
  }

  @Override
  public String sentence() {
    return "What must be kept apart is never in one oven at one time.";
  }

  @Override
  public List<Break> check(Case plan) {
    List<Break> breaks = new ArrayList<>();
    List<Bakes> bakes = Bakes.of(plan);
    for (int i = 0; i < bakes.size(); i++) {
      for (Bakes other : bakes.subList(i + 1, bakes.size())) {
        check(plan.event(), bakes.get(i), other, breaks);
      }
    }
    return breaks;
  }

  private void check(Event event, Bakes one, Bakes other, List<Break> breaks) {
    Stretch shared = one.inside().shared(other.inside());
    if (shared == null || !one.oven().equals(other.oven())) {
      return;
    }
    for (Event.Apart apart : event.apart()) {
      if (mustBeApart(apart, one.dish(), other.dish())) {
        String what = apart.one() + " and " + apart.other() + " share the oven for " + shared.minutes()
            + " min";
        breaks.add(Break.of(this, List.of(one.oven(), one.name(), other.name()), shared, shared.minutes(),
            Break.Unit.MINUTES, what));
      }
    }
  }

  /** A dish that has both tags is at peace with itself. */
  private static boolean mustBeApart(Event.Apart apart, Dish one, Dish other) {
    return !one.name().equals(other.name())
        && (has(one, apart.one(), other, apart.other()) || has(one, apart.other(), other, apart.one()));
  }

  private static boolean has(Dish one, String tag, Dish other, String otherTag) {
    return one.tags().contains(tag) && other.tags().contains(otherTag);
  }
}
