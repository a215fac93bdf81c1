package ovenloom.model.why;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Case;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Link;
import ovenloom.model.plan.Placement;

/**
 * What follows a run.
 *
 * @param name as the audit calls it; {@link #TABLE} where its food goes there
 * @param run that follows; absent for the table
 * @param at the minute it begins
 * @param least minutes that must lie between
 */
public record Next(String name, @Nullable Placement run, int at, int least) {

  /** Where everything ends. */
  public static final String TABLE = "the table";

  /** All of them, the soonest first. */
  static List<Next> of(Case plan, Placement run) {
    List<Next> all = new ArrayList<>();
    for (BatchStep step : plan.steps(run)) {
      for (BatchLink link : plan.work().outOf(step.index())) {
        Placement later = plan.run(plan.work().steps().get(link.to()));
        if (later != null && link.link().kind() != Link.Kind.ALONGSIDE) {
          all.add(new Next(plan.name(later), later, later.when().from(), link.link().least()));
        }
      }
      if (plan.work().goesToTheTable(step.index()) && !step.step().serve()) {
        all.add(new Next(TABLE, null,
            plan.event().due(step.dish(), step.batches().first()), 0));
      }
    }
    return all.stream().distinct().sorted((one, other) -> Integer.compare(one.at, other.at)).toList();
  }
}
