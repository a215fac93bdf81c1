package ovenloom.solver.search;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.IntFunction;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Power;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Step;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Plan;

/** Takes the air out of a kitchen, thing by thing, as long as the plan for it stays a plan. */
final class Tightening {

  private static final int WATTS = 250;

  /** No circuit is too weak for an oven that hangs on it. */
  private static final int AN_OVEN = 3000;

  private final Random random;
  private final double strength;
  private Event event;
  private final Plan plan;

  /**
   * A kitchen to be made tight.
   *
   * @param strength from 0, everything stays as it is, to 1, everything is cut to what the plan uses
   */
  Tightening(Event event, Plan plan, Random random, double strength) {
    this.event = event;
    this.plan = plan;
    this.random = random;
    this.strength = strength;
  }

  Event event() {
    return event;
  }

  /** The plan, for the event as it has become. */
  Plan plan() {
    return Changed.counted(event, plan);
  }

  void tighten() {
    menu();
    new TighterHours(this, plan, random, strength).tighten();
    for (Oven oven : event.kitchen().ovens()) {
      oven(oven);
    }
    burners();
    for (Store store : event.kitchen().stores()) {
      shelves(store);
    }
    for (Vessel vessel : event.kitchen().vessels()) {
      if (asked()) {
        lower(1, vessel.count(), count -> Changed.kitchen(event, count(event.kitchen(), vessel, count)),
            "clean vessels", "long enough");
      }
    }
    if (asked()) {
      lower(1, event.kitchen().landing(),
          most -> Changed.kitchen(event, Changed.landing(event.kitchen(), most)), "landing");
    }
    for (Circuit circuit : event.kitchen().circuits()) {
      lower(AN_OVEN / WATTS, circuit.limit().watts() / WATTS,
          most -> Changed.kitchen(event, limit(circuit, most * WATTS)), "circuits");
    }
  }

  private boolean asked() {
    return random.nextDouble() < strength;
  }

  /** Takes an event in the place of this one if the plan keeps those rules in it that the change touches. */
  boolean offer(Event tighter, String... rules) {
    Set<String> touched = Set.of(rules);
    boolean stands = Changed.keeps(new Cards(Work.of(tighter)), plan, touched::contains);
    if (stands) {
      event = tighter;
    }
    return stands;
  }

  /** Cuts a number to the least with which the plan stands. */
  private void lower(int least, int now, IntFunction<Event> with, String... rules) {
    int low = least;
    int high = now;
    while (low < high) {
      int middle = Math.floorDiv(low + high, 2);
      if (offer(with.apply(middle), rules)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
  }

  static Kitchen count(Kitchen kitchen, Vessel vessel, int count) {
    List<Vessel> vessels = kitchen.vessels()
        .stream()
        .map(each -> each.name().equals(vessel.name())
            ? new Vessel(each.name(), count, each.size(), each.burner(), each.wash(), each.open())
            : each)
        .toList();
    return Changed.vessels(kitchen, vessels);
  }

  private Kitchen limit(Circuit circuit, int watts) {
    List<Circuit> circuits = event.kitchen()
        .circuits()
        .stream()
        .map(each -> each.name().equals(circuit.name()) ? new Circuit(each.name(), new Power(watts)) : each)
        .toList();
    return Changed.circuits(event.kitchen(), circuits);
  }

  private void oven(Oven oven) {
    if (!asked()) {
      return;
    }
    Kitchen kitchen = event.kitchen();
    List<Oven> others = kitchen.ovens().stream().filter(each -> !each.name().equals(oven.name())).toList();
    boolean gone = plan.ovens().stream().noneMatch(log -> log.oven().equals(oven.name()))
        && offer(Changed.kitchen(event, Changed.ovens(kitchen, others)), "set-points", "long enough");
    if (!gone) {
      lower(1, oven.racks().size(), count -> Changed.kitchen(event, racks(event.kitchen(), oven, count)),
          "room inside", "long enough");
    }
  }

  static Kitchen racks(Kitchen kitchen, Oven oven, int count) {
    List<Oven> ovens = kitchen.ovens()
        .stream()
        .map(each -> each.name().equals(oven.name())
            ? new Oven(each.name(), each.dial(), each.modes(), each.warmth(), each.hold(),
                each.racks().subList(0, count), each.heating(), each.holding(), each.circuit(), each.open())
            : each)
        .toList();
    return Changed.ovens(kitchen, ovens);
  }

  private void burners() {
    for (Burner burner : event.kitchen().burners()) {
      if (asked() && event.kitchen().burners().size() > 1) {
        offer(Changed.kitchen(event, Changed.without(event.kitchen(), burner)), "burners", "stays", "open",
            "long enough");
      }
    }
  }

  private void shelves(Store store) {
    for (Shelf shelf : store.shelves()) {
      if (asked()) {
        List<Store> stores = event.kitchen()
            .stores()
            .stream()
            .map(each -> without(each, store, shelf))
            .toList();
        if (!stores.equals(event.kitchen().stores())) {
          offer(Changed.kitchen(event, Changed.stores(event.kitchen(), stores)), "stays", "shelves",
              "raw below", "open", "long enough");
        }
      }
    }
  }

  static Store without(Store each, Store store, Shelf shelf) {
    if (!each.name().equals(store.name()) || each.shelves().size() == 1) {
      return each;
    }
    List<Shelf> shelves = each.shelves().stream().filter(other -> !other.equals(shelf)).toList();
    return new Store(each.name(), each.kind(), each.holds(), each.air(), shelves, each.warmLoad(),
        each.open());
  }

  private void menu() {
    TighterStep tighter = new TighterStep(random, strength);
    for (Dish dish : event.dishes()) {
      for (Step step : dish.steps()) {
        Dish now = event.dish(dish.name());
        Step old = now.step(step.name());
        Step cut = tighter.of(now, old, plan);
        if (!cut.equals(old)) {
          offer(Changed.step(event, now, old, cut), "everything once", "links", "stays", "keeps",
              "long enough");
        }
      }
    }
  }
}
