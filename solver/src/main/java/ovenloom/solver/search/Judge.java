package ovenloom.solver.search;

import java.util.List;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Break;
import ovenloom.model.life.Cards;
import ovenloom.model.plan.Plan;

/**
 * Has the last word on what the decoder takes for a plan. Asked of what would be the best so far: of each where one was refused, else
 * of the best of some schedules.
 */
@FunctionalInterface
interface Judge {

  /** The audit, for plans of a menu whose cards these are. */
  static Judge audit(Cards cards) {
    return plan -> Audit.of(plan, cards);
  }

  /** The rules a plan breaks; none where it is one. */
  List<Break> breaks(Plan plan);
}
