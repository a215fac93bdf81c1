package ovenloom.solver.proof;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.solver.place.Run;

/** The batches of a step, and which of them surely have a run of their own. */
final class BatchesOf {

  private BatchesOf() {}

  /** All runs, by the step of the menu they do, batch after batch. */
  static Collection<List<Run>> steps(List<Run> runs) {
    Map<List<String>, List<Run>> groups = new LinkedHashMap<>();
    for (Run run : runs) {
      groups.computeIfAbsent(List.of(run.dish().name(), run.step().name()), none -> new ArrayList<>())
          .add(run);
    }
    return groups.values();
  }

  /**
   * Of each step as many batches as there are runs of it at least: where three may go together, every third, since those that share a run
   * follow one another.
   */
  static List<Run> apart(List<Run> runs) {
    return steps(runs).stream().flatMap(BatchesOf::everySo).toList();
  }

  private static Stream<Run> everySo(List<Run> batches) {
    int together = batches.getFirst().step().together().most();
    return IntStream.range(0, batches.size()).filter(i -> i % together == 0).mapToObj(batches::get);
  }

  /** The same of steps that fill one vessel for all batches that share a run; of other steps all. */
  static List<Run> inVesselsOfTheirOwn(List<Run> runs) {
    return steps(runs).stream()
        .flatMap(
            batches -> batches.getFirst().step().together().oneVessel() ? everySo(batches) : batches.stream())
        .toList();
  }
}
