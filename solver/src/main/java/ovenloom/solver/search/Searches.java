package ovenloom.solver.search;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.entity.EntitySelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListSwapMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.value.ValueSelectorConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;

/** How Timefold is told to search: plain moves, late acceptance, no construction, for it starts from an order that decodes. */
final class Searches {

  private static final int LATE = 100;

  private Searches() {}

  static Solver<Order> with(Budget budget, long seed) {
    TerminationConfig end = new TerminationConfig();
    if (budget.time() != null) {
      end = end.withSpentLimit(budget.time());
    }
    if (budget.tries() != null) {
      end = end.withMoveCountLimit(budget.tries());
    }
    SolverConfig config = new SolverConfig()
        .withSolutionClass(Order.class)
        .withEntityClasses(Queue.class, Turn.class)
        .withEasyScoreCalculatorClass(OrderCalculator.class)
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withRandomSeed(seed)
        .withTerminationConfig(end)
        .withPhases(localSearch());
    return SolverFactory.<Order>create(config).buildSolver();
  }

  private static LocalSearchPhaseConfig localSearch() {
    return new LocalSearchPhaseConfig()
        .withMoveSelectorConfig(new UnionMoveSelectorConfig()
            .withMoveSelectors(
                new ListChangeMoveSelectorConfig(),
                new ListSwapMoveSelectorConfig(),
                change("slack"),
                change("choice")))
        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE))
        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
  }

  private static ChangeMoveSelectorConfig change(String variable) {
    return new ChangeMoveSelectorConfig()
        .withEntitySelectorConfig(new EntitySelectorConfig(Turn.class))
        .withValueSelectorConfig(new ValueSelectorConfig(variable));
  }
}
