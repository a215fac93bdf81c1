package ovenloom.solver.wish;

import ovenloom.model.menu.Wish;

/** The points of one wish. */
interface WishPoints {

  Wish wish();

  /** Points before the weight, 0 or more. */
  long of(Outcome outcome);
}
