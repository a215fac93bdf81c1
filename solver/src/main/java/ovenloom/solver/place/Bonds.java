package ovenloom.solver.place;

import java.util.List;
import java.util.stream.IntStream;

/** What comes before and after each run, and where its food waits; worked out once, since it is asked at every schedule. */
final class Bonds {

  private final List<List<Tie>> before;
  private final List<List<Tie>> after;
  private final List<List<Integer>> waits;
  private final int[] nextBatch;

  Bonds(Runs runs) {
    before = runs.runs().stream().map(run -> before(runs, run.index())).toList();
    after = runs.runs().stream().map(run -> after(runs, run.index())).toList();
    waits = runs.runs().stream().map(run -> waits(runs, run.index())).toList();
    nextBatch = runs.runs().stream().mapToInt(run -> nextBatch(runs, run)).toArray();
  }

  private static int nextBatch(Runs runs, Run run) {
    int next = run.index() + 1;
    boolean same = next < runs.runs().size()
        && runs.runs().get(next).step().equals(run.step())
        && runs.runs().get(next).dish().equals(run.dish());
    return same ? next : -1;
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

  /** The run of the next batch of the same step; -1 for the last. */
  int nextBatch(int run) {
    return nextBatch[run];
  }

  /** The run of the batch before it; -1 for the first. */
  int batchBefore(int run) {
    return run > 0 && nextBatch[run - 1] == run ? run - 1 : -1;
  }
}
