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

  /** The same, to be told again while these change; no more can be added to it. */
  public Amiss copy() {
    Amiss copy = new Amiss(count);
    copy.set(this);
    return copy;
  }

  /** Those of another, in place of all that were. */
  public void set(Amiss other) {
    System.arraycopy(other.steps, 0, steps, 0, other.count);
    count = other.count;
  }

  /** One of them, another for another step; where none is wrong that step itself. */
  int insteadOf(int step) {
    return count == 0 ? step : steps[step % count];
  }
}
