package ovenloom.cli.calendar;

import ovenloom.cli.sheet.Words;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Dish;
import ovenloom.model.plan.Plan;

/** Which batches of a step, behind its name: {@code , batch 2 of 3}; nothing where it is all of them. */
record Some(Plan plan, String dish, String step, Batches batches) {

  @Override
  public String toString() {
    Dish whole = plan.event().dish(dish);
    int count = whole.batches();
    boolean isAll = whole.step(step).once() || batches.count() == count;
    return isAll ? "" : ", " + Words.batches(batches) + " of " + count;
  }
}
