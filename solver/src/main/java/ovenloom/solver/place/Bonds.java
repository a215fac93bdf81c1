package ovenloom.solver.place;

import java.util.List;
import java.util.stream.IntStream;

/** What comes before and after each run, and where its food waits; worked out once, since it is asked at every schedule. */
final class Bonds {

  private final List<List<Tie>> before;
  private final List<List<Tie>> after;
  private final List<List<Integer>> waits;

  Bonds(Runs runs) {
    before = runs.runs().stream().map(run -> before(runs, run.index())).toList();
    after = runs.runs().stream().map(run -> after(runs, run.index())).toList();
    waits = runs.runs().stream().map(run -> waits(runs, run.index())).toList();
  }

  private static List<Tie> before(Runs runs, int run) {
    return runs.ties().stream().filter(tie -> tie.later() == run).toList();
  }

  private static List<Tie> after(Runs runs, int run) {
    return runs.ties().stream().filter(tie -> tie.earlier() == run).toList();
  }

  private static List<Integer> waits(Runs runs, int run) {
    return IntStream.range(0, runs.waits().size())
        .filter(wait -> runs.waits().get(wait).run() == run)
        .boxed()
        .toList();
  }

  /** The ties to what a run follows. */
  List<Tie> before(int run) {
    return before.get(run);
  }

  /** The ties to what follows a run. */
  List<Tie> after(int run) {
    return after.get(run);
  }

  /** The numbers of the waits of a run's food. */
  List<Integer> waits(int run) {
    return waits.get(run);
  }
}
