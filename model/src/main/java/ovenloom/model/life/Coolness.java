package ovenloom.model.life;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;

/**
 * By how much dishes that are to be cool or cold come to the table too warm, by {@link MeanWarmth}: what the score asks, thousands of
 * times a second. What was frozen is not followed.
 */
public final class Coolness {

  private static final double TENTHS = 10;

  private final Event event;
  private final MeanWarmth warmth;
  private final double cool;
  private final List<BatchStep> ends = new ArrayList<>();

  /** Of all food that arrives cool or cold. */
  public Coolness(Cards cards, MeanWarmth warmth) {
    this.warmth = warmth;
    event = cards.work().event();
    cool = Math.max(Served.COOL, event.kitchen().room().inCelsius() + 1);
    for (BatchStep step : cards.work().steps()) {
      boolean counts = step.dish().arrives() == Arrives.COOL || step.dish().arrives() == Arrives.COLD;
      if (counts && cards.work().goesToTheTable(step.index()) && !warmth.wasFrozen(step.index())) {
        ends.add(step);
      }
    }
  }

  /**
   * By dish, portions times tenths of a kelvin; dishes that are cool enough are left out.
   *
   * @param begins how warm the food of each step is as it begins, by {@link MeanWarmth#follow}
   */
  public Map<String, Long> of(MeanWarmth.Timetable times, double[] begins) {
    Map<String, Long> all = new TreeMap<>();
    for (BatchStep step : ends) {
      long tenths = Math
          .round(TENTHS * Math.max(0, warmest(times, step, begins[step.index()]) - most(step.dish())));
      if (tenths > 0) {
        all.merge(step.dish().name(), tenths * step.dish().portionsInABatch(), Long::sum);
      }
    }
    return all;
  }

  /** How warm a dish that is to be cool or cold may be, C. */
  public double most(Dish dish) {
    return dish.arrives() == Arrives.COOL ? cool : Served.COLD;
  }

  /** As it is served, or from when it is due until all are. */
  private double warmest(MeanWarmth.Timetable times, BatchStep step, double began) {
    int i = step.index();
    if (step.step().serve()) {
      return warmth.waited(times, i, began, times.end(i));
    }
    int due = event.due(step.dish(), step.batches().first());
    double then = warmth.waited(times, i, began, due);
    int minutes = Math.max(0, event.endOfService(step.dish()) - due);
    return Math.max(then, warmth.after(i, MeanWarmth.COUNTER, minutes, then));
  }
}
