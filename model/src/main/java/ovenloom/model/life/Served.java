package ovenloom.model.life;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleBinaryOperator;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.plan.Plan;

/**
 * How warm a dish is predicted to be at the table, stirred together, C: the batch and the moment that are worst for how it is to
 * arrive.
 *
 * @param likely in air as it mostly is
 * @param coldest in air that takes or gives less or more, open where no card says, and as far as any thermometer may be off
 * @param warmest likewise, with a lid where no card says
 */
public record Served(Dish dish, double likely, double coldest, double warmest) {

  private static final double LITTLE_DRAUGHT = 0.7;
  private static final double MUCH_DRAUGHT = 1.4;

  /** What a food thermometer may be off by, K: FDA Food Code 2017, 4-203.11(A); from memory. */
  private static final double READING = 1;

  /** Every dish that is followed to the table, in the order of the menu. */
  public static List<Served> all(Plan plan, Life likely) {
    List<Life> lives = List.of(likely, Life.of(plan, likely.cards(), LITTLE_DRAUGHT, Unsaid.LID),
        Life.of(plan, likely.cards(), MUCH_DRAUGHT, Unsaid.OPEN));
    List<Served> all = new ArrayList<>();
    for (Dish dish : plan.event().dishes()) {
      List<Double> found = lives.stream()
          .map(life -> worst(plan.event(), dish, life))
          .filter(Objects::nonNull)
          .toList();
      if (found.size() == lives.size()) {
        DoubleSummaryStatistics band = found.stream().mapToDouble(each -> each).summaryStatistics();
        all.add(new Served(dish, found.getFirst(), band.getMin() - READING, band.getMax() + READING));
      }
    }
    return all;
  }

  private static boolean isWarm(Dish dish) {
    return dish.arrives() == Arrives.HOT || dish.arrives() == Arrives.WARM;
  }

  private static @Nullable Double worst(Event event, Dish dish, Life life) {
    boolean warm = isWarm(dish);
    DoubleBinaryOperator worse = warm ? Math::min : Math::max;
    Double worst = null;
    for (BatchStep step : life.work().steps()) {
      if (step.dish().name().equals(dish.name()) && life.work().goesToTheTable(step.index())) {
        List<Leg> legs = life.of(step);
        if (legs.isEmpty() || legs.getLast().when().to() < event.due(dish, step.batches().first())) {
          return null;
        }
        double now = worst(event, step, legs.getLast(), worse);
        worst = worst == null ? now : (Double) worse.applyAsDouble(worst, now);
      }
    }
    return worst;
  }

  /** A batch that is served by a step is judged when that ends; another one from when it is due until all are served. */
  private static double worst(Event event, BatchStep step, Leg last, DoubleBinaryOperator worse) {
    int end = last.when().to();
    if (step.step().serve()) {
      return last.at(end).mean();
    }
    double due = last.at(event.due(step.dish(), step.batches().first())).mean();
    return worse.applyAsDouble(due, last.at(end).mean());
  }

  /**
   * By how many kelvins it misses how it is to arrive, at the likeliest; 0 or less if it does not. What is cool may be as warm as the room.
   *
   * @param room C
   */
  public double misses(double room) {
    return switch (dish.arrives()) {
      case HOT -> HOT - likely;
      case WARM -> WARM - likely;
      case COOL -> likely - coolIn(room);
      case COLD -> likely - COLD;
    };
  }

  /** How warm what is cool may be, C: as the room, where that is warmer. */
  public static double coolIn(double room) {
    return Math.max(COOL, room + 1);
  }

  /** At least, C. Common practice, as are the next three. */
  public static final double HOT = 60;

  /** At least, C. */
  public static final double WARM = 40;

  /** At most, C. */
  public static final double COOL = 18;

  /** At most, C. */
  public static final double COLD = 8;
}
