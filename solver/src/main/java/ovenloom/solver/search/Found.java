package ovenloom.solver.search;

import java.util.List;
import java.util.Set;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Plan;
import ovenloom.solver.place.Scarce;

/**
 * The best a search came to.
 *
 * @param plan a plan if {@code breaks} is empty; else only the best try
 * @param breaks what the audit found
 * @param shortages what the best try lacked, the worst first; none for a plan
 * @param isMisjudged whether the search took it for a plan and the audit does not
 * @param schedules tried in all
 */
public record Found(
    Plan plan, List<Break> breaks, List<Shortage> shortages, boolean isMisjudged, long schedules) {

  /**
   * What seems short.
   *
   * @param steps that asked for it in vain, those that fell short by most first
   */
  public record Shortage(Scarce what, List<String> steps) {

    public Shortage {
      steps = List.copyOf(steps);
    }
  }

  public Found {
    breaks = List.copyOf(breaks);
    shortages = List.copyOf(shortages);
  }

  /** Rules that ask how warm food is layer by layer; the search knows its mean only. */
  private static final Set<String> BY_LAYERS = Set.of("safe", "long enough", "warm load");

  /** Whether it is misjudged by more than how warm food is: a fault of this program. */
  public boolean isOurFault() {
    return isMisjudged && !breaks.stream().map(Break::rule).allMatch(BY_LAYERS::contains);
  }

  /** Whether it is a plan. */
  public boolean isAPlan() {
    return breaks.isEmpty();
  }
}
