package ovenloom.model.audit;

import java.util.function.Function;
import java.util.function.IntFunction;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.plan.Plan;

/**
 * Two plans that differ in one thing.
 *
 * @param clean keeps every rule, as near to a limit as can be
 * @param planted is just beyond that limit
 * @param step whose food it is that is beyond it
 * @param says what the break is to say: where the limit is written, if it says so
 */
record Twins(Plan clean, Plan planted, String step, String says) {

  /** By what differs. */
  static <T> Twins of(Function<T, Plans> plan, T clean, T planted, String step, String says) {
    return new Twins(counted(plan.apply(clean)), counted(plan.apply(planted)), step, says);
  }

  /** By minutes that differ. */
  static Twins ofMinutes(IntFunction<Plans> plan, int clean, int planted, String step, String says) {
    return of(plan::apply, clean, planted, step, says);
  }

  /** With the score that it has. */
  private static Plan counted(Plans plans) {
    Plan plan = plans.plan();
    return plans.score(Reckoning.of(plan.event(), plan)).plan();
  }
}
