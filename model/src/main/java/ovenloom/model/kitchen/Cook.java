package ovenloom.model.kitchen;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ovenloom.model.measure.Stretch;

/**
 * Someone who works here, and does one thing at a time.
 *
 * @param hours when, in order, not touching one another
 * @param breaks inside the hours: no work, but there
 */
public record Cook(String name, List<Stretch> hours, List<Stretch> breaks, Set<String> skills) {

  public Cook {
    hours = List.copyOf(hours);
    breaks = List.copyOf(breaks);
    skills = Collections.unmodifiableSet(new TreeSet<>(skills));
  }
}
