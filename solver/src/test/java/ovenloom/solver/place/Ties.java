package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which steps wait for which, and by how much.
 *
 * <p>Where no step, directly or through others, is tied to itself, the links as given are enough: a
 * step is set down after all it waits for. Otherwise a step may meet others, set down earlier, that
 * limit it from above, and not only through direct links; then the longest way between any two
 * steps is kept.
 */
final class Ties {

  private static final int APART = Integer.MIN_VALUE;

  /** For each step, those set down before it. */
  final int[][] before;

  /** For each step, those that hold it off, and by how many minutes from start to start. */
  final int[][] earlier;

  final int[][] earlierLag;

  /** For each step, those it holds off, if they may be there before it. */
  final int[][] later;

  final int[][] laterLag;

  /** A step that its ties put after itself; or -1. */
  final int contradicted;

  Ties(InnerProblem problem) {
    int[][] lags = lags(problem);
    boolean tangled = isTangled(lags);
    if (tangled) {
      followThrough(lags);
    }
    int count = lags.length;
    contradicted = contradicted(lags);
    before = new int[count][];
    earlier = new int[count][];
    earlierLag = new int[count][];
    later = new int[count][];
    laterLag = new int[count][];
    for (int step = 0; step < count; step++) {
      List<Integer> first = new ArrayList<>();
      List<Integer> holding = new ArrayList<>();
      List<Integer> held = new ArrayList<>();
      for (int other = 0; other < count; other++) {
        if (other != step && lags[other][step] != APART) {
          holding.add(other);
          if (comesFirst(lags, other, step)) {
            first.add(other);
          }
        }
        if (other != step && tangled && lags[step][other] != APART) {
          held.add(other);
        }
      }
      int from = step;
      before[step] = numbers(first);
      earlier[step] = numbers(holding);
      earlierLag[step] = holding.stream().mapToInt(other -> lags[other][from]).toArray();
      later[step] = numbers(held);
      laterLag[step] = held.stream().mapToInt(other -> lags[from][other]).toArray();
    }
  }

  /** Whether a greatest gap ties a step to another, before which it may be placed. */
  boolean mayComeTooSoon(int step, int other) {
    int[] held = later[other];
    return IntStream.range(0, held.length).anyMatch(i -> held[i] == step && laterLag[other][i] <= 0);
  }

  private static int[] numbers(List<Integer> steps) {
    return steps.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int[][] lags(InnerProblem problem) {
    int count = problem.steps().size();
    int[][] lags = new int[count][count];
    for (int[] row : lags) {
      Arrays.fill(row, APART);
    }
    for (InnerProblem.Link link : problem.links()) {
      lags[link.from()][link.to()] = Math.max(lags[link.from()][link.to()], link.lag());
    }
    return lags;
  }

  /** One that is tied back to the other comes first only if it truly starts earlier. */
  private static boolean comesFirst(int[][] lags, int one, int other) {
    int there = lags[one][other];
    int back = lags[other][one];
    return back == APART || there > 0 || (there == 0 && back < 0);
  }

  private static boolean isTangled(int[][] lags) {
    int[] waitsFor = new int[lags.length];
    for (int[] row : lags) {
      for (int to = 0; to < row.length; to++) {
        waitsFor[to] += row[to] == APART ? 0 : 1;
      }
    }
    int[] free = new int[lags.length];
    int found = 0;
    for (int step = 0; step < lags.length; step++) {
      if (waitsFor[step] == 0) {
        free[found++] = step;
      }
    }
    for (int next = 0; next < found; next++) {
      int[] row = lags[free[next]];
      for (int to = 0; to < row.length; to++) {
        if (row[to] != APART && --waitsFor[to] == 0) {
          free[found++] = to;
        }
      }
    }
    return found < lags.length;
  }

  /** Stops at the first contradiction: going round it, the ways would grow without end. */
  private static void followThrough(int[][] lags) {
    for (int through = 0; through < lags.length && contradicted(lags) < 0; through++) {
      for (int from = 0; from < lags.length; from++) {
        int first = lags[from][through];
        for (int to = 0; first != APART && to < lags.length; to++) {
          int second = lags[through][to];
          if (second != APART) {
            lags[from][to] = Math.max(lags[from][to], first + second);
          }
        }
      }
    }
  }

  private static int contradicted(int[][] lags) {
    for (int step = 0; step < lags.length; step++) {
      if (lags[step][step] > 0) {
        return step;
      }
    }
    return -1;
  }
}
