package ovenloom.solver.exact;

import ovenloom.model.plan.Plan;

/** What is proven of a kitchen. */
sealed interface Answer {

  /** There is no plan. */
  record NoPlan() implements Answer {}

  /** The best plan, first at the table, then by the wishes. */
  record Best(Plan plan) implements Answer {}
}
