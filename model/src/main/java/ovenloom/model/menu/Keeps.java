package ovenloom.model.menu;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How long food stays good, by place, minutes. A place that is not named allows none, but for the first quarter of an
 * hour on the counter.
 *
 * @param stores by the name of a fridge, freezer or hot place
 */
public record Keeps(
    @Nullable Integer counter,
    @Nullable Integer oven,
    @Nullable Integer burner,
    Map<String, Integer> stores) {

  /** Only the first minutes on the counter. */
  public static final Keeps HARDLY = new Keeps(null, null, null, Map.of());

  /** Minutes on the counter, in each gap, that do not count. */
  public static final int FREE_ON_THE_COUNTER = 15;

  public Keeps {
    stores = Collections.unmodifiableMap(new TreeMap<>(stores));
  }
}
