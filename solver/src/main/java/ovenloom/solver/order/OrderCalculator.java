package ovenloom.solver.order;

import ai.timefold.solver.core.api.score.SimpleScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;

/** Scores an order by its price. */
public class OrderCalculator implements EasyScoreCalculator<Order, SimpleScore> {

  @Override
  public SimpleScore calculateScore(Order order) {
    return SimpleScore.of(-order.price().of(order));
  }
}
