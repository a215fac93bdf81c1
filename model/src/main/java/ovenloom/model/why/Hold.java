package ovenloom.model.why;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Placement;

/**
 * What holds a run where it is.
 *
 * @param name as the audit calls it
 * @param next what follows it, the soonest first
 * @param free minutes by which it may be later, as tried; 0 where a minute breaks something
 * @param breaks what breaks a minute after that; never empty
 * @param best of the places tried that are later by a tick of the event's clock or more, and break nothing; absent where there is none
 */
public record Hold(
    Placement run, String name, List<Next> next, int free, List<Break> breaks, @Nullable Trial best) {

  public Hold {
    next = List.copyOf(next);
    breaks = List.copyOf(breaks);
  }

  /** What follows and is the first thing to be in its way; absent where something else is. */
  @Nullable
  Placement heldBy() {
    return next.stream()
        .filter(each -> breaks.getFirst().who().equals(List.of(name, each.name())))
        .map(Next::run)
        .findFirst()
        .orElse(null);
  }
}
