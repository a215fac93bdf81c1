package ovenloom.solver.order;

/** The steps that came out wrong in the last schedule. Belongs to one search. */
public final class Amiss {

  private final int[] steps;
  private int count;

  /** Of so many steps, none of which is wrong yet. */
  public Amiss(int all) {
    steps = new int[all];
  }

  /** Forgets all. */
  public void clear() {
    count = 0;
  }

  /** One more that came out wrong. */
  public void add(int step) {
    if (count < steps.length) {
      steps[count++] = step;
    }
  }

  /** One of them, another for another step; where none is wrong that step itself. */
  int insteadOf(int step) {
    return count == 0 ? step : steps[step % count];
  }
}
