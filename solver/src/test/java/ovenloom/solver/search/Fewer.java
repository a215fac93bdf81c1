package ovenloom.solver.search;

import java.util.List;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.menu.Event;

/**
 * An event with one unit less of one thing.
 *
 * @param what is missing, in a word that is its own among all that may be
 */
public record Fewer(String what, Event event) {

  /** All there may be: some of everything stays. */
  public static List<Fewer> all(Event event) {
    Kitchen kitchen = event.kitchen();
    return Stream.of(cooks(event), burners(event, kitchen), racks(event, kitchen), vessels(event, kitchen),
        shelves(event, kitchen), landing(event, kitchen)).flatMap(each -> each).toList();
  }

  private static Stream<Fewer> cooks(Event event) {
    return event.cooks()
        .stream()
        .filter(cook -> event.cooks().size() > 1)
        .map(cook -> new Fewer("cook " + cook.name(),
            Changed.cooks(event, event.cooks().stream().filter(each -> !each.equals(cook)).toList())));
  }

  private static Stream<Fewer> burners(Event event, Kitchen kitchen) {
    return kitchen.burners()
        .stream()
        .filter(burner -> kitchen.burners().size() > 1)
        .map(burner -> new Fewer("burner " + burner.name(),
            Changed.kitchen(event, Changed.without(kitchen, burner))));
  }

  private static Stream<Fewer> racks(Event event, Kitchen kitchen) {
    return kitchen.ovens()
        .stream()
        .filter(oven -> oven.racks().size() > 1)
        .map(oven -> new Fewer("rack of " + oven.name(),
            Changed.kitchen(event, Tightening.racks(kitchen, oven, oven.racks().size() - 1))));
  }

  private static Stream<Fewer> vessels(Event event, Kitchen kitchen) {
    return kitchen.vessels()
        .stream()
        .filter(vessel -> vessel.count() > 1)
        .map(vessel -> new Fewer(vessel.name(),
            Changed.kitchen(event, Tightening.count(kitchen, vessel, vessel.count() - 1))));
  }

  private static Stream<Fewer> shelves(Event event, Kitchen kitchen) {
    return kitchen.stores()
        .stream()
        .filter(store -> store.shelves().size() > 1)
        .map(store -> new Fewer("shelf of " + store.name(), Changed.kitchen(event,
            kitchen.with(kitchen.stores()
                .stream()
                .map(each -> Tightening.without(each, store, store.shelves().getLast()))
                .toList()))));
  }

  private static Stream<Fewer> landing(Event event, Kitchen kitchen) {
    return kitchen.landing() > 1
        ? Stream.of(new Fewer("place to put down",
            Changed.kitchen(event, Changed.landing(kitchen, kitchen.landing() - 1))))
        : Stream.of();
  }
}
