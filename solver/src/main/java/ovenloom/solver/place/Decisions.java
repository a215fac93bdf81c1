package ovenloom.solver.place;

import java.util.Comparator;
import java.util.stream.IntStream;

/** What a search decides, for each step of the work by its index; all else is the decoder's. */
public final class Decisions {

  /** Leaves a choice to the decoder. */
  public static final int OPEN = -1;

  /** Leaves it to the rules how many batches share a run: as many as may. */
  public static final int AS_MANY_AS_MAY = Integer.MAX_VALUE;

  private final int[] order;
  private final int[] earlier;
  private final int[] start;
  private final int[] bake;
  private final int[] stay;
  private final int[] together;

  private Decisions(int[] order, int[] earlier, int[] start, int[] bake, int[] stay, int[] together) {
    this.order = order;
    this.earlier = earlier;
    this.start = start;
    this.bake = bake;
    this.stay = stay;
    this.together = together;
  }

  /** For so many steps: as they stand in the work, as late as they fit, and everything left to the decoder. */
  public static Decisions open(int steps) {
    int[] open = IntStream.generate(() -> OPEN).limit(steps).toArray();
    return new Decisions(
        IntStream.range(0, steps).toArray(),
        new int[steps],
        open,
        open.clone(),
        open.clone(),
        IntStream.generate(() -> AS_MANY_AS_MAY).limit(steps).toArray());
  }

  public int steps() {
    return order.length;
  }

  /**
   * The step that has a turn. An earlier turn means placed earlier, and so later in the day; batches that share a run are
   * placed when the first of them has its turn.
   */
  public int step(int turn) {
    return order[turn];
  }

  public void setStep(int turn, int step) {
    order[turn] = step;
  }

  /** The turn of each step. */
  public double[] turns() {
    double[] turns = new double[order.length];
    for (int turn = 0; turn < order.length; turn++) {
      turns[order[turn]] = turn;
    }
    return turns;
  }

  /** Gives the steps their turns by how soon each wants it, for each step. */
  public void queueBy(double[] wanted) {
    int[] queue = IntStream.range(0, wanted.length)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer step) -> wanted[step]))
        .mapToInt(Integer::intValue)
        .toArray();
    System.arraycopy(queue, 0, order, 0, order.length);
  }

  /** Minutes a step is to end before it must; for one that serves, to begin after it may. */
  public int earlier(int step) {
    return earlier[step];
  }

  public void setEarlier(int step, int minutes) {
    earlier[step] = minutes;
  }

  /** How cold the food of a bake goes in, by number among the starts it may have; or {@link #OPEN}. */
  public int start(int step) {
    return start[step];
  }

  public void setStart(int step, int number) {
    start[step] = number;
  }

  /** The way to bake a step, by its number among those the decoder offers; or {@link #OPEN}. */
  public int bake(int step) {
    return bake[step];
  }

  public void setBake(int step, int way) {
    bake[step] = way;
  }

  /** Where the food of a step is to wait, by number among the places it may; or {@link #OPEN}. */
  public int stay(int step) {
    return stay[step];
  }

  public void setStay(int step, int way) {
    stay[step] = way;
  }

  /** How many batches of a step share a run at most, for the step of the first batch; or {@link #AS_MANY_AS_MAY}. */
  public int together(int step) {
    return together[step];
  }

  public void setTogether(int step, int most) {
    together[step] = most;
  }

  /** Decides for a step as others did, but for its turn. */
  public void setAsIn(Decisions others, int step) {
    earlier[step] = others.earlier[step];
    start[step] = others.start[step];
    bake[step] = others.bake[step];
    stay[step] = others.stay[step];
    together[step] = others.together[step];
  }

  /** The same, to be kept while these are changed. */
  public Decisions copy() {
    return new Decisions(order.clone(), earlier.clone(), start.clone(), bake.clone(), stay.clone(),
        together.clone());
  }

  /** Decides as others did. */
  public void set(Decisions others) {
    System.arraycopy(others.order, 0, order, 0, order.length);
    System.arraycopy(others.earlier, 0, earlier, 0, earlier.length);
    System.arraycopy(others.start, 0, start, 0, start.length);
    System.arraycopy(others.bake, 0, bake, 0, bake.length);
    System.arraycopy(others.stay, 0, stay, 0, stay.length);
    System.arraycopy(others.together, 0, together, 0, together.length);
  }
}
