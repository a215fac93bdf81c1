package ovenloom.solver.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ovenloom.solver.place.InnerProblem;
import ovenloom.solver.place.InnerProblem.Link;
import ovenloom.solver.place.InnerProblem.Step;

/**
 * Reads a problem of the PSPLIB (Kolisch and Sprecher 1996) in its {@code .sm} format: each job
 * starts when all before it have ended, and takes so many of four resources.
 */
public final class PsplibFile {

  private PsplibFile() {}

  /** The problem in these lines; jobs are numbered from zero, the first and the last being none. */
  public static InnerProblem read(List<String> lines) {
    List<Step> steps = new ArrayList<>();
    for (int[] row : table(lines, "REQUESTS/DURATIONS", 3)) {
      steps.add(new Step(row[2], numbers(row, 3)));
    }
    List<Link> links = new ArrayList<>();
    for (int[] row : table(lines, "PRECEDENCE RELATIONS", 2)) {
      int job = row[0] - 1;
      for (int successor : numbers(row, 3)) {
        links.add(new Link(job, successor - 1, steps.get(job).minutes()));
      }
    }
    int[] capacities = table(lines, "RESOURCEAVAILABILITIES", 2).getFirst();
    return new InnerProblem(steps, numbers(capacities, 0), links);
  }

  private static List<int[]> table(List<String> lines, String heading, int headingLines) {
    int first = 0;
    while (!lines.get(first).startsWith(heading)) {
      first++;
    }
    return lines.stream()
        .skip(first + (long) headingLines)
        .takeWhile(line -> !line.startsWith("*"))
        .map(line -> Arrays.stream(line.trim().split("\\s+")).mapToInt(Integer::parseInt).toArray())
        .toList();
  }

  private static List<Integer> numbers(int[] row, int from) {
    return Arrays.stream(row, from, row.length).boxed().toList();
  }
}
