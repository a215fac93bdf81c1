package ovenloom.solver.proof;

import java.util.List;

/**
 * One thing that steps share, with all that they ask of it.
 *
 * @param what it is
 * @param there how much of it there is between two minutes: amounts times minutes
 */
record Supply(Clash.Kind kind, String what, List<Task> tasks, There there) {

  /** How much there is between two minutes. */
  interface There {
    long between(int from, int to);
  }

  Supply {
    tasks = List.copyOf(tasks);
  }

  /** Of so many at any time. */
  static Supply of(String what, List<Task> tasks, long amount) {
    return new Supply(Clash.Kind.MINUTES, what, tasks, (from, to) -> amount * (to - from));
  }
}
