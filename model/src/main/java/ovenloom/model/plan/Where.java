package ovenloom.model.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Setting;

/** Where food waits. */
public sealed interface Where {

  /** The worktop, a trolley, a cooling rack. */
  record Counter() implements Where {}

  /**
   * Shelves of one cold or hot place.
   *
   * @param shelves names, one for each vessel, batch by batch; one in all where the food has no vessel
   */
  record OnShelf(String store, List<String> shelves) implements Where {
    public OnShelf {
      shelves = List.copyOf(shelves);
    }
  }

  /**
   * The oven it was baked in, on the racks it was baked on.
   *
   * @param mark the dial's; absent: switched off
   */
  record InOven(String oven, @Nullable Setting mark) implements Where {}

  /** Its burners, turned low. */
  record OnBurner(List<String> burners) implements Where {
    public OnBurner {
      burners = List.copyOf(burners);
    }
  }
}
