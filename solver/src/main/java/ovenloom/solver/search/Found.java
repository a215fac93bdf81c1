package ovenloom.solver.search;

import java.util.List;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Plan;

/**
 * The best a search came to.
 *
 * @param plan a plan if {@code breaks} is empty; else only the best try
 * @param breaks what the audit found
 * @param schedules decoded in all
 */
public record Found(Plan plan, List<Break> breaks, long schedules) {

  public Found {
    breaks = List.copyOf(breaks);
  }

  /** Whether it is a plan. */
  public boolean isAPlan() {
    return breaks.isEmpty();
  }
}
