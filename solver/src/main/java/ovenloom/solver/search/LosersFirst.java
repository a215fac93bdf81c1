package ovenloom.solver.search;

import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Work;
import ovenloom.solver.place.Decisions;

/**
 * Lets a dish that loses at the table choose before all others: what is to be cool with its whole head start, what is to be hot as late as
 * it fits. Where the others then find room, or whether they do, is for them to plead.
 */
final class LosersFirst {

  private final Work work;
  private final Decisions ahead;

  /** @param ahead the head start of each */
  LosersFirst(Work work, Decisions ahead) {
    this.work = work;
    this.ahead = ahead;
  }

  /** Good decisions, but for a dish. */
  Decisions of(Decisions good, Dish dish) {
    boolean isToCool = dish.arrives() == Arrives.COOL || dish.arrives() == Arrives.COLD;
    Decisions next = good.copy();
    double[] wanted = good.turns();
    for (BatchStep step : work.steps()) {
      int i = step.index();
      if (step.dish().equals(dish)) {
        wanted[i] -= wanted.length;
        next.setEarlier(i, isToCool ? ahead.earlier(i) : 0);
      }
    }
    next.queueBy(wanted);
    return next;
  }
}
