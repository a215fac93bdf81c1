package ovenloom.solver.batch;

import ovenloom.model.file.ProblemFile;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;
import ovenloom.solver.search.Budget;

/**
 * A plan of nearly the same event, to begin with.
 *
 * @param digest of what the plan hangs on: its event, and how long it was looked for
 */
public record WarmStart(Plan plan, String digest) {

  public static WarmStart of(Event event, Budget budget, Plan plan) {
    return new WarmStart(plan, Digest.of(ProblemFile.json(event) + budget));
  }
}
