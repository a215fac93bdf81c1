package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Where;

/**
 * How food comes to a step on the heat: from where it is known how warm it is, over the counter, a cold place, and the counter again.
 *
 * @param known its steps so far, after the last of which it is as warm as the room, or as a burner makes it; none for a first step
 * @param chilled the step that is the time in the cold; absent where it waits there or nowhere cold
 * @param fridge where it may wait; absent where nowhere cold, or in a step
 * @param to the step on the heat
 * @param grid the most minutes in each place
 * @param before minutes on the counter before the cold, chosen
 * @param cold in the cold
 * @param after on the counter after it
 */
record Journey(List<BatchStep> known, @Nullable BatchStep chilled, @Nullable Store fridge, BatchStep to,
    Grid grid,
    LinearArgument before, LinearArgument cold, LinearArgument after) {

  /** Whether it comes from the heat before. */
  boolean isFromTheHeat() {
    return !known.isEmpty() && known.getLast().step().cooks();
  }

  /** Whether it may come in more ways than one. */
  boolean varies() {
    return grid.size() > 1;
  }

  boolean isPossible(int minutesCold) {
    return chilled == null || minutesCold >= chilled.minutes();
  }

  /** Food that spends so many minutes in each place, as it comes to the heat. */
  Rehearsal rehearsal(Cards cards, int minutesBefore, int minutesCold, int minutesAfter) {
    Rehearsal dish = new Rehearsal(cards);
    known.forEach(step -> dish.does(step, step.minutes(), null));
    dish.waits(new Where.Counter(), minutesBefore);
    if (chilled != null) {
      dish.does(chilled, minutesCold, null);
    } else if (fridge != null) {
      dish.waitsIn(fridge.name(), minutesCold);
    }
    return dish.waits(new Where.Counter(), minutesAfter);
  }
}
