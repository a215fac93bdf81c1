package ovenloom.model.chill;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;

/**
 * One way to cool food, as a card offers it.
 *
 * @param name {@link #SHALLOW_PANS}, {@link #ICE_BATH}, {@code fridge}, {@code freezer}, or a cold place by its name
 * @param minutes for how long; absent: until it is cold; out of ice and out of a freezer as soon as it may go into the fridge
 */
public record WayToChill(String name, @Nullable Integer minutes) {

  /** Spread out in shallower vessels, in the fridge. */
  public static final String SHALLOW_PANS = "shallow pans";

  /** In water with ice, stirred if it is liquid. */
  public static final String ICE_BATH = "ice bath";

  /** Where in a kitchen that can be. */
  List<Store> stores(Kitchen kitchen) {
    return kitchen.stores().stream().filter(store -> switch (name) {
      case SHALLOW_PANS, "fridge" -> store.kind() == Store.Kind.FRIDGE;
      case ICE_BATH -> store.kind() == Store.Kind.ICE_BATH;
      case "freezer" -> store.kind() == Store.Kind.FREEZER;
      default -> store.name().equals(name);
    }).toList();
  }
}
