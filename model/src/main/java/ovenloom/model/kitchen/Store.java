package ovenloom.model.kitchen;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Mass;
import ovenloom.model.measure.Temperature;

/**
 * A cold or hot place: something with shelves that keeps food at a temperature.
 *
 * @param holds the temperature of its air
 * @param air how that moves
 * @param shelves from the top down
 * @param warmLoad how much warm food may be put in within an hour; absent where it may be any, and in all but fridges
 */
public record Store(String name, Kind kind, Temperature holds, Air air, List<Shelf> shelves,
    @Nullable Mass warmLoad, Availability open) {

  /** What a fridge takes where a file does not say. Common practice, no source. */
  public static final Mass WARM_LOAD = Mass.grams(4000);

  /** What a store is for. */
  public enum Kind {
    FRIDGE,
    FREEZER,

    /** Water with ice in it. Cools what stands in it from below, up to the rim of its vessel. */
    ICE_BATH,
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
    if (warmLoad != null && kind != Kind.FRIDGE) {
      throw new IllegalArgumentException("\"" + name + "\" is no fridge, and bounds no warm food");
    }
  }

  /** One that takes as much warm food as its kind and its air usually do. */
  public Store(String name, Kind kind, Temperature holds, Air air, List<Shelf> shelves, Availability open) {
    this(name, kind, holds, air, shelves, usualWarmLoad(kind, air), open);
  }

  /** Where a file does not say: a blast chiller is made to take warm food, and takes any. */
  public static @Nullable Mass usualWarmLoad(Kind kind, Air air) {
    return kind == Kind.FRIDGE && air != Air.BLAST ? WARM_LOAD : null;
  }
}
