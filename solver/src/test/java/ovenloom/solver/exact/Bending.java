package ovenloom.solver.exact;

import java.util.List;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Starts;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;

/** How many minutes each bake takes by where it is baked: the tables that search and audit have too, of food that comes one way. */
final class Bending {

  private static final int PERCENT_AT_LEAST = 60;

  private final BakeMinutes minutes;
  private final Starts starts;

  Bending(Work work) {
    minutes = new BakeMinutes(new Cards(work));
    starts = new Starts(minutes.cards());
  }

  int minutes(BatchStep bake, Oven oven, String mode, List<Setting> marks) {
    return minutes.needed(bake, oven, mode, marks, start(bake).celsius());
  }

  Starts.Start start(BatchStep bake) {
    List<Starts.Start> all = starts.of(bake);
    if (all.size() > 1) {
      throw new UnsupportedOperationException("food that may go in cold or warm, of " + bake);
    }
    return all.getFirst();
  }

  /** Fewer than that no bake is booked for, in windows as small as they are here. */
  static int least(BatchStep step) {
    return step.step().bake() == null ? step.minutes() : step.minutes() * PERCENT_AT_LEAST / 100;
  }
}
