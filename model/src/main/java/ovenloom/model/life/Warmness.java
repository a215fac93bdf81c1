package ovenloom.model.life;

import ovenloom.model.heat.Cooling;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Work;

/**
 * How far food that has come off its last heat has cooled below what its guests are to have, by the minutes since: what the score
 * asks, thousands of times a second. It cools from the start as it does once the first minutes are over ({@link Cooling}).
 */
public final class Warmness {

  private static final double TENTHS = 10;

  private final double[] done;
  private final double[] wanted;
  private final Cooling[] onTheCounter;

  /** Of all food that arrives hot or warm. */
  public Warmness(Work work) {
    int steps = work.steps().size();
    done = new double[steps];
    wanted = new double[steps];
    onTheCounter = new Cooling[steps];
    Cards cards = new Cards(work);
    for (BatchStep step : work.steps()) {
      if (step.step().cooks() && isWarm(step.dish())) {
        int i = step.index();
        done[i] = cards.done(step);
        wanted[i] = Math.min(done[i], step.dish().arrives() == Arrives.HOT ? Served.HOT : Served.WARM);
        onTheCounter[i] = cards.cooling(cards.substance().body(step),
            cards.lids(Unsaid.OPEN).onTheCounter(coverer(work, step)));
      }
    }
  }

  /** The step that says whether its food is covered on its way to the table: itself, else the next that does. */
  private static BatchStep coverer(Work work, BatchStep step) {
    if (step.step().covered() != null) {
      return step;
    }
    return work.outOf(step.index())
        .stream()
        .filter(BatchLink::makesAStay)
        .map(link -> work.steps().get(link.to()))
        .filter(next -> next.dish().equals(step.dish()) && !next.step().serve())
        .map(next -> coverer(work, next))
        .filter(next -> next.step().covered() != null)
        .findFirst()
        .orElse(step);
  }

  /** Whether it is to arrive hot or warm. */
  public static boolean isWarm(Dish dish) {
    return dish.food() && (dish.arrives() == Arrives.HOT || dish.arrives() == Arrives.WARM);
  }

  /**
   * Tenths of a kelvin that the food of a step on an oven or burner is short of 60 C if it is to be hot, of 40 C if warm, and of
   * what it was done at where that is less.
   *
   * @param minutes since it came off the heat that nothing kept it warm and nobody needed; none below 0
   */
  public int tenthsShort(int step, long minutes) {
    double now = onTheCounter[step].after((double) Math.max(0, minutes), done[step]);
    return (int) Math.round(Math.max(0, wanted[step] - now) * TENTHS);
  }
}
