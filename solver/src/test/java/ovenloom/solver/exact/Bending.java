package ovenloom.solver.exact;

import java.util.List;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Starts;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.StartState;
import ovenloom.model.menu.Work;

/** How many minutes each bake takes by where it is baked and how cold its food comes: the tables that search and audit have too. */
final class Bending {

  private static final int PERCENT_AT_LEAST = 60;

  private final BakeMinutes minutes;
  private final Starts starts;

  Bending(Work work) {
    minutes = new BakeMinutes(new Cards(work));
    starts = new Starts(minutes.cards());
  }

  Cards cards() {
    return minutes.cards();
  }

  BakeMinutes minutes() {
    return minutes;
  }

  /** How its food may come to a bake, by what may be before it. */
  List<Starts.Start> starts(BatchStep bake) {
    return starts.of(bake);
  }

  /** Whether it always comes as warm as the room. */
  boolean isAlwaysRested(BatchStep bake) {
    return starts(bake).stream().allMatch(start -> start.state() == StartState.RESTED);
  }

  /** Fewer than that no bake is booked for, in windows as small as they are here. */
  static int least(BatchStep step) {
    return step.step().bake() == null ? step.minutes() : step.minutes() * PERCENT_AT_LEAST / 100;
  }
}
