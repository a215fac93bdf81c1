package ovenloom.solver.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ovenloom.solver.place.InnerProblem;
import ovenloom.solver.place.InnerProblem.Link;
import ovenloom.solver.place.InnerProblem.Step;

/**
 * Reads a problem with least and greatest gaps in the {@code .sch} format of ProGen/max (Schwindt):
 * gaps run from start to start, and below zero they are greatest gaps.
 */
public final class ProGenMaxFile {

  private ProGenMaxFile() {}

  /** The problem in these lines; the first and the last activity are none. */
  public static InnerProblem read(List<String> lines) {
    List<List<String>> rows = lines.stream()
        .filter(line -> !line.isBlank())
        .map(line -> Arrays.asList(line.trim().split("\\s+")))
        .toList();
    int count = Integer.parseInt(rows.getFirst().getFirst()) + 2;
    List<Link> links = new ArrayList<>();
    for (List<String> row : rows.subList(1, 1 + count)) {
      int successors = Integer.parseInt(row.get(2));
      for (int i = 3; i < 3 + successors; i++) {
        String lag = row.get(i + successors);
        links.add(
            new Link(
                Integer.parseInt(row.getFirst()),
                Integer.parseInt(row.get(i)),
                Integer.parseInt(lag.substring(1, lag.length() - 1))));
      }
    }
    List<Step> steps = rows.subList(1 + count, 1 + 2 * count)
        .stream()
        .map(row -> numbers(row, 2))
        .map(row -> new Step(row.getFirst(), row.subList(1, row.size())))
        .toList();
    return new InnerProblem(steps, numbers(rows.get(1 + 2 * count), 0), links);
  }

  private static List<Integer> numbers(List<String> row, int from) {
    return row.stream().skip(from).map(Integer::valueOf).toList();
  }
}
