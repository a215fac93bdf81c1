package ovenloom.solver.search;

import java.util.Comparator;
import java.util.List;
import ovenloom.model.menu.BatchStep;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.Runs;
import ovenloom.solver.place.Tie;

/**
 * The order a search begins with: what comes to the table last first, and of each dish what is nearest to the table, so
 * that no dish has all its steps placed before another has any.
 */
final class FirstOrder {

  private FirstOrder() {}

  static Decisions of(Runs runs) {
    int[] latest = latestStarts(runs);
    List<Integer> order = runs.runs()
        .stream()
        .sorted(Comparator.comparingInt((Run run) -> -latest[run.index()]).thenComparingInt(Run::index))
        .flatMap(run -> run.units().stream().map(BatchStep::index))
        .toList();
    Decisions decisions = Decisions.open(order.size());
    for (int turn = 0; turn < order.size(); turn++) {
      decisions.setStep(turn, order.get(turn));
    }
    return decisions;
  }

  /** The minute at which each run begins at the latest, if it had the kitchen to itself. */
  static int[] latestStarts(Runs runs) {
    int[] latest = new int[runs.runs().size()];
    for (Run run : runs.runs().reversed()) {
      int end = run.step().serve() ? run.endOfService() : run.due();
      for (Tie tie : runs.ties()) {
        if (tie.earlier() == run.index()) {
          end = Math.min(end, latest[tie.later()] - tie.link().least());
        }
      }
      latest[run.index()] = end - run.minutes();
    }
    return latest;
  }
}
