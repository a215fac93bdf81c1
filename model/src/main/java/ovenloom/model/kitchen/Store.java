package ovenloom.model.kitchen;

import java.util.List;
import ovenloom.model.measure.Temperature;

/**
 * A cold or hot place: something with shelves that keeps food at a temperature.
 *
 * @param holds the temperature of its air
 * @param air how that moves
 * @param shelves from the top down
 */
public record Store(String name, Kind kind, Temperature holds, Air air, List<Shelf> shelves,
    Availability open) {

  /** What a store is for. */
  public enum Kind {
    FRIDGE,
    FREEZER,
    HOT;

    /** Whether food in it is on a cold shelf. */
    public boolean isCold() {
      return this != HOT;
    }
  }

  public Store {
    shelves = List.copyOf(shelves);
    if (shelves.isEmpty()) {
      throw new IllegalArgumentException("\"" + name + "\" needs a shelf");
    }
  }
}
