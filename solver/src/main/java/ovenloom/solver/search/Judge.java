package ovenloom.solver.search;

import java.util.List;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

/**
 * Has the last word on what the decoder takes for a plan. Asked of each that would be the best so far, which is seldom:
 * what the decoder misjudged must not keep true plans from being found.
 */
@FunctionalInterface
interface Judge {

  Judge AUDIT = Audit::of;

  /** The rules a plan breaks; none where it is one. */
  List<Break> breaks(Event event, Plan plan);
}
