package ovenloom.cli.lane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;

/**
 * What a lane is taken by for a while.
 *
 * @param dish whose food it is, or which vessel is washed; empty for a break
 * @param step of that dish; empty where it is for none
 * @param count of vessels, else 1
 * @param row of the lane, from 0, in which nothing else is at that time; in an oven from the lowest rack up
 */
public record Box(Use use, Stretch when, String dish, String step, Batches batches, int count, int row) {

  /** What for. */
  public enum Use {
    /** A step is done there. */
    WORK,

    /** Food waits there after a step. */
    WAIT,

    /** A vessel holds food, wherever it stands. */
    FULL,

    WASH,
    BREAK
  }

  static Box of(Placement run) {
    return new Box(Use.WORK, run.when(), run.dish(), run.step(), run.batches(), 1, 0);
  }

  static Box of(Stay stay, Stay.Part part) {
    return new Box(Use.WAIT, part.when(), stay.dish(), stay.step(), stay.batches(), 1, 0);
  }

  /** The same, with what is done to one batch after another of a dish at the same time in one. */
  static List<Box> together(List<Box> boxes) {
    List<Box> all = new ArrayList<>();
    for (Box box : boxes.stream().sorted(Comparator.comparingInt(each -> each.batches.first())).toList()) {
      if (all.stream().anyMatch(box::goesOnFrom)) {
        all.replaceAll(each -> box.goesOnFrom(each) ? each.upTo(box.batches.last()) : each);
      } else {
        all.add(box);
      }
    }
    return all;
  }

  private boolean goesOnFrom(Box other) {
    return use == other.use && when.equals(other.when) && dish.equals(other.dish) && step.equals(other.step)
        && other.batches.last() + 1 == batches.first();
  }

  private Box upTo(int batch) {
    return new Box(use, when, dish, step, new Batches(batches.first(), batch), count, row);
  }

  Box during(Stretch other) {
    return new Box(use, other, dish, step, batches, count, row);
  }

  Box inRow(int other) {
    return new Box(use, when, dish, step, batches, count, other);
  }
}
