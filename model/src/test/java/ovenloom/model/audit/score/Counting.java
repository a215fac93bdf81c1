package ovenloom.model.audit.score;

import ovenloom.model.audit.Plans;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Plan;

/** What a plan's score is, counted again. */
final class Counting {

  private Counting() {}

  static long points(Wish wish, Plans plans) {
    Plan plan = plans.plan();
    return Reckoning.of(plan.event(), plan).points().getOrDefault(wish, -1L);
  }
}
