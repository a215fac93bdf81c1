package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Appliance;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;

/**
 * A thing of the kitchen in use.
 *
 * @param isOneOfSeveral whether others may have some of it and leave enough, which is for another rule to count
 * @param who uses it, as a cook would call it
 */
record Used(String thing, Availability open, boolean isOneOfSeveral, String who, Stretch when) {

  /** All uses of all that the kitchen has. */
  static List<Used> of(Case plan) {
    List<Used> all = new ArrayList<>();
    Kitchen kitchen = plan.event().kitchen();
    ovens(plan, kitchen, all);
    for (OnBurner pot : OnBurner.of(plan)) {
      Burner burner = kitchen.burner(pot.burner());
      if (burner != null) {
        all.add(new Used(burner.name(), burner.open(), false, pot.who(), pot.when()));
      }
    }
    Shelved.of(plan).forEach(food -> food.places().forEach(place -> shelf(food, place, kitchen, all)));
    plan.plan().placements().forEach(run -> appliances(plan, run, kitchen, all));
    for (Filled filled : Filled.of(plan)) {
      Vessel vessel = kitchen.vessel(filled.vessel());
      if (vessel != null) {
        all.add(new Used(vessel.name(), vessel.open(), true, filled.who(), filled.when()));
      }
    }
    return all;
  }

  /** Whenever it is on, and while food is inside though it be off. */
  private static void ovens(Case plan, Kitchen kitchen, List<Used> all) {
    for (OvenLog log : plan.plan().ovens()) {
      Oven oven = kitchen.oven(log.oven());
      if (oven != null) {
        log.spans()
            .forEach(span -> all.add(new Used(oven.name(), oven.open(), false, oven.name(), span.when())));
      }
    }
    for (Bakes bake : Bakes.of(plan)) {
      Oven oven = kitchen.oven(bake.oven());
      if (oven != null) {
        all.add(new Used(oven.name(), oven.open(), false, bake.name(), bake.inside()));
      }
    }
  }

  private static void shelf(Shelved food, ShelfPlace place, Kitchen kitchen, List<Used> all) {
    Store store = kitchen.store(place.store());
    if (store == null) {
      return;
    }
    all.add(new Used(store.name(), store.open(), false, food.who(), food.when()));
    for (Shelf shelf : store.shelves()) {
      if (shelf.name().equals(place.shelf())) {
        all.add(new Used(store.name() + ", " + shelf.name(), shelf.open(), false, food.who(), food.when()));
      }
    }
  }

  private static void appliances(Case plan, Placement run, Kitchen kitchen, List<Used> all) {
    for (String name : Appliances.usedBy(plan, run)) {
      Appliance appliance = kitchen.appliance(name);
      if (appliance != null) {
        all.add(new Used(name, appliance.open(), true, plan.name(run), run.when()));
      }
    }
  }
}
