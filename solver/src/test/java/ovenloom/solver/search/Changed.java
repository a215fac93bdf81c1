package ovenloom.solver.search;

import java.util.List;
import java.util.function.Predicate;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Case;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Circuit;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;

/** Events and plans with one thing changed. */
final class Changed {

  private Changed() {}

  static Event kitchen(Event event, Kitchen kitchen) {
    return new Event(event.name(), event.rules(), event.guests(), event.calendar(), event.from(),
        event.clock(), event.courses(), kitchen, event.cooks(), event.dishes(), event.apart(),
        event.wishes());
  }

  static Event cooks(Event event, List<Cook> cooks) {
    return new Event(event.name(), event.rules(), event.guests(), event.calendar(), event.from(),
        event.clock(), event.courses(), event.kitchen(), cooks, event.dishes(), event.apart(),
        event.wishes());
  }

  /** A step of a dish put in the place of another. */
  static Event step(Event event, Dish dish, Step old, Step step) {
    List<Step> steps = dish.steps().stream().map(each -> each.equals(old) ? step : each).toList();
    Dish changed = new Dish(dish.name(), dish.course(), dish.food(), dish.servings(), dish.arrives(),
        dish.tags(), dish.waves(), dish.servedOver(), dish.bestFor(), dish.matter(),
        dish.ingredients(), steps);
    List<Dish> dishes = event.dishes().stream().map(each -> each.equals(dish) ? changed : each).toList();
    return new Event(event.name(), event.rules(), event.guests(), event.calendar(), event.from(),
        event.clock(), event.courses(), event.kitchen(), event.cooks(), dishes, event.apart(),
        event.wishes());
  }

  static Kitchen landing(Kitchen kitchen, int landing) {
    return new Kitchen(kitchen.room(), landing, kitchen.gap(), kitchen.ovens(), kitchen.burners(),
        kitchen.stores(), kitchen.vessels(), kitchen.appliances(), kitchen.circuits());
  }

  static Kitchen ovens(Kitchen kitchen, List<Oven> ovens) {
    return new Kitchen(kitchen.room(), kitchen.landing(), kitchen.gap(), ovens, kitchen.burners(),
        kitchen.stores(), kitchen.vessels(), kitchen.appliances(), kitchen.circuits());
  }

  static Kitchen without(Kitchen kitchen, Burner burner) {
    return new Kitchen(kitchen.room(), kitchen.landing(), kitchen.gap(), kitchen.ovens(),
        kitchen.burners().stream().filter(each -> !each.equals(burner)).toList(), kitchen.stores(),
        kitchen.vessels(), kitchen.appliances(), kitchen.circuits());
  }

  static Kitchen stores(Kitchen kitchen, List<Store> stores) {
    return new Kitchen(kitchen.room(), kitchen.landing(), kitchen.gap(), kitchen.ovens(),
        kitchen.burners(), stores, kitchen.vessels(), kitchen.appliances(), kitchen.circuits());
  }

  static Kitchen vessels(Kitchen kitchen, List<Vessel> vessels) {
    return new Kitchen(kitchen.room(), kitchen.landing(), kitchen.gap(), kitchen.ovens(),
        kitchen.burners(), kitchen.stores(), vessels, kitchen.appliances(), kitchen.circuits());
  }

  static Kitchen circuits(Kitchen kitchen, List<Circuit> circuits) {
    return new Kitchen(kitchen.room(), kitchen.landing(), kitchen.gap(), kitchen.ovens(),
        kitchen.burners(), kitchen.stores(), kitchen.vessels(), kitchen.appliances(), circuits);
  }

  /** Whether a plan keeps some of the rules; the score, which is counted once all is changed, is not one of them. */
  static boolean keeps(Cards cards, Plan plan, Predicate<String> rules) {
    Case audited = new Case(cards, plan);
    return Audit.RULES.stream()
        .filter(
            rule -> rules.test(rule.id()) && !rule.id().equals("score"))
        .allMatch(rule -> rule.check(audited).isEmpty());
  }

  /** The same plan for another event, its score counted again. */
  static Plan counted(Event event, Plan plan) {
    Plan same = new Plan(event, plan.sources(), plan.placements(), plan.stays(), plan.ovens(), plan.washes(),
        plan.layouts(), plan.score());
    return new Plan(event, plan.sources(), plan.placements(), plan.stays(), plan.ovens(), plan.washes(),
        plan.layouts(), Reckoning.of(event, same));
  }

  /** A plan with other runs, stays and washes. */
  static Plan with(List<Placement> runs, List<Stay> stays, List<Wash> washes, Plan plan) {
    return new Plan(plan.event(), plan.sources(), runs, stays, plan.ovens(), washes, plan.layouts(),
        plan.score());
  }
}
