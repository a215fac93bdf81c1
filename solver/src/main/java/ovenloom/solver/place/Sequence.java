package ovenloom.solver.place;

import java.util.Arrays;
import ovenloom.model.menu.BatchStep;

/** In which order runs are placed for an order of steps: what is cooked after all that follows it, what is served before it. */
final class Sequence {

  private static final long ODD = 0x9E3779B97F4A7C15L;
  private static final int HALF = 29;

  private final Runs runs;
  private final Bonds bonds;
  private final int[] entries;
  private final boolean[] isIn;
  private int size;

  Sequence(Runs runs, Bonds bonds) {
    this.runs = runs;
    this.bonds = bonds;
    entries = new int[2 * runs.runs().size()];
    isIn = new boolean[runs.runs().size()];
  }

  /** That of decisions, until it is asked for the next. */
  void set(Decisions decisions) {
    size = 0;
    Arrays.fill(isIn, false);
    for (int turn = 0; turn < decisions.steps(); turn++) {
      add(runs.runOf().get(decisions.step(turn)));
    }
  }

  int size() {
    return size;
  }

  /** A run that is to be placed; or the complement of one that is served, whose food is to be put where it waits now that all around it is placed. */
  int get(int entry) {
    return entries[entry];
  }

  private void add(int run) {
    if (!isIn[run]) {
      if (runs.runs().get(run).step().serve()) {
        addServed(run);
      } else {
        addAfterWhatFollows(run);
      }
    }
  }

  private void addAfterWhatFollows(int run) {
    int next = bonds.nextBatch(run);
    if (next >= 0) {
      add(next);
    }
    for (Tie tie : bonds.after(run)) {
      add(tie.later());
    }
    if (!isIn[run]) {
      put(run);
    }
  }

  private void addServed(int run) {
    int batch = bonds.batchBefore(run);
    if (batch >= 0) {
      add(batch);
    }
    for (Tie tie : bonds.before(run)) {
      if (runs.runs().get(tie.earlier()).step().serve()) {
        add(tie.earlier());
      }
    }
    if (!isIn[run]) {
      put(run);
      for (Tie tie : bonds.after(run)) {
        add(tie.later());
      }
      entries[size++] = ~run;
    }
  }

  private void put(int run) {
    isIn[run] = true;
    entries[size++] = run;
  }

  /** A number that decisions which place all in this order have in common only, but for odd chance, if the same plan follows from them. */
  long print(Decisions decisions) {
    long print = size;
    for (int entry = 0; entry < size; entry++) {
      int run = entries[entry];
      print = mixed(print, run);
      if (run >= 0) {
        print = mixed(print, decisions, runs.runs().get(run));
      }
    }
    return print;
  }

  private static long mixed(long print, Decisions decisions, Run run) {
    int first = run.units().getFirst().index();
    long mixed = mixed(mixed(print, decisions.earlier(first)), decisions.bake(first));
    for (BatchStep unit : run.units()) {
      mixed = mixed(mixed(mixed, decisions.start(unit.index())), decisions.stay(unit.index()));
    }
    return mixed;
  }

  private static long mixed(long print, long next) {
    long mixed = (print ^ next) * ODD;
    return mixed ^ (mixed >>> HALF);
  }
}
