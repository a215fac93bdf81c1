package ovenloom.solver.search;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.PreviewFeature;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import ovenloom.solver.order.Neighbourhoods;
import ovenloom.solver.order.Order;
import ovenloom.solver.order.OrderCalculator;
import ovenloom.solver.order.Queue;
import ovenloom.solver.order.Turn;

/** How Timefold is told to search: our own moves, late acceptance, no construction, for it starts from an order that decodes. */
final class Searches {

  /** Steps ago that a patient search may be as bad as, and a hasty one. */
  private static final int LATE = 100;
  private static final int SOON = 5;

  private Searches() {}

  /**
   * One that tries so many orders, the one it starts with among them, unless it is told to stop.
   *
   * @param isHasty whether it comes down soon to the nearest good plan, or looks around longer
   */
  static Solver<Order> of(long tries, long seed, boolean isHasty) {
    SolverConfig config = new SolverConfig()
        .withPreviewFeature(PreviewFeature.NEIGHBORHOODS)
        .withSolutionClass(Order.class)
        .withEntityClasses(Queue.class, Turn.class)
        .withEasyScoreCalculatorClass(OrderCalculator.class)
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withRandomSeed(seed)
        .withTerminationConfig(new TerminationConfig().withMoveCountLimit(tries - 1))
        .withPhases(localSearch(isHasty ? SOON : LATE));
    return SolverFactory.<Order>create(config).buildSolver();
  }

  private static LocalSearchPhaseConfig localSearch(int late) {
    LocalSearchPhaseConfig phase = new LocalSearchPhaseConfig()
        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(late))
        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    phase.setNeighborhoodProviderClass(Neighbourhoods.class);
    return phase;
  }
}
