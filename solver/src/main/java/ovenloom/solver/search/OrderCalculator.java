package ovenloom.solver.search;

import ai.timefold.solver.core.api.score.SimpleScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;

/** Scores an order by decoding it. */
public class OrderCalculator implements EasyScoreCalculator<Order, SimpleScore> {

  @Override
  public SimpleScore calculateScore(Order order) {
    return SimpleScore.of(-order.trial().of(order));
  }
}
