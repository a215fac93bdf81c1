package ovenloom.model.variation;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One choice along each axis.
 *
 * @param choices by axis, in the order of the axes
 * @param patches a JSON merge patch for each choice, in the same order, with what stands in the files it names in their place
 */
public record Variation(Map<String, String> choices, List<String> patches) {

  public Variation {
    choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    patches = List.copyOf(patches);
  }

  /** What it is called: its choices. */
  public String name() {
    return choices.entrySet().stream().map(Variation::said).collect(Collectors.joining(", "));
  }

  /** A number alone says nothing: 120 what? */
  private static String said(Map.Entry<String, String> choice) {
    return choice.getValue().matches("[0-9]+") ? choice.getValue() + " " + choice.getKey()
        : choice.getValue();
  }
}
