package ovenloom.model.tally;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Axis;
import ovenloom.model.variation.Variation;

/**
 * The run of some whose plan is best; of equals the one that came first.
 *
 * @param choices by axis
 */
public record Best(Map<String, String> choices, Score score) {

  public Best {
    choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
  }

  /** What the run is called. */
  public String name() {
    return name(choices);
  }

  /** The same without its choice along an axis, where that is known; nothing, where there is no other axis. */
  public String nameBeside(Axis axis) {
    Map<String, String> others = new LinkedHashMap<>(choices);
    others.remove(axis.name());
    return name(others);
  }

  private static String name(Map<String, String> some) {
    return new Variation(some, List.of()).name();
  }
}
