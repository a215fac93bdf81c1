package ovenloom.model.chill;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Event;

/** A sink with ice in it: any kitchen may have one. */
final class IceBath {

  /** Melting ice, and what the food brings in. Common practice. */
  private static final Temperature WATER = Temperature.celsius(1);

  /** The bowl of a kitchen sink. Common practice. */
  private static final Shelf SINK = new Shelf("sink", Length.mm(500), Length.mm(400), Length.mm(250),
      Availability.ALWAYS);

  private IceBath() {}

  /** The event, in a kitchen with an ice bath. */
  static Event in(Event event) {
    Kitchen kitchen = event.kitchen();
    if (kitchen.stores().stream().anyMatch(store -> store.kind() == Store.Kind.ICE_BATH)) {
      return event;
    }
    List<Store> stores = new ArrayList<>(kitchen.stores());
    stores.add(new Store(WayToChill.ICE_BATH, Store.Kind.ICE_BATH, WATER, Air.ICE_WATER, List.of(SINK),
        Availability.ALWAYS));
    return event.with(kitchen.with(stores));
  }
}
