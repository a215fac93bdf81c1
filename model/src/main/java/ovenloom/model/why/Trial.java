package ovenloom.model.why;

import java.util.List;
import ovenloom.model.audit.Break;
import ovenloom.model.plan.Plan;

/**
 * What comes of moving a run.
 *
 * @param minutes by which it was moved, later; less than 0 for earlier
 * @param breaks of rules; none where the plan is still one
 * @param plan in which it is there
 */
public record Trial(int minutes, List<Break> breaks, Plan plan) {

  public Trial {
    breaks = List.copyOf(breaks);
  }

  /** Whether it breaks nothing. */
  public boolean keepsAllRules() {
    return breaks.isEmpty();
  }
}
