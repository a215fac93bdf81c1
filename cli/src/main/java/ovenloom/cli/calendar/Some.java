package ovenloom.cli.calendar;

import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;

/** Which batches of a step, behind its name: {@code , batch 2 of 3}; nothing where it is all of them. */
record Some(Plan plan, String dish, String step, Batches batches) {

  @Override
  public String toString() {
    Dish whole = plan.event().dish(dish);
    int count = whole.batches();
    if (whole.step(step).once() || batches.count() == count) {
      return "";
    }
    return batches.count() == 1 ? ", batch " + batches.first() + " of " + count
        : ", batches " + batches.first() + " to " + batches.last() + " of " + count;
  }
}
