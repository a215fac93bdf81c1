package ovenloom.solver.batch;

import ovenloom.model.file.PlanFile;
import ovenloom.model.plan.Plan;

/**
 * A plan of nearly the same event, to begin with.
 *
 * @param digest of the plan
 */
public record WarmStart(Plan plan, String digest) {

  public static WarmStart of(Plan plan) {
    return new WarmStart(plan, Digest.of(PlanFile.json(plan)));
  }
}
