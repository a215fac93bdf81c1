package ovenloom.solver.place;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.solver.timeline.CountTimeline;
import ovenloom.solver.timeline.Timeline;

/**
 * Puts published scheduling problems to the timelines the product books on: turns an order of steps into a plan, where each
 * in turn starts as early as it fits after zero, or ends as late as it fits before zero, beside those already there. The
 * decoder of the product books a kitchen, which those problems are not; what both rely on is {@link CountTimeline}.
 *
 * <p>A step brings what it waits for with it, so any order will do. Where one comes out later than
 * a greatest gap allows, those that limit it are taken up again, with all that start after them,
 * and held back by as much; as often as there are steps, then the order is given up. Nothing is
 * allocated while decoding. Belongs to one thread.
 */
public final class InnerDecoder {

  /** The answer to an order that leads to no plan. */
  public static final int NO_PLAN = -1;

  private static final int UNPLACED = Integer.MIN_VALUE;
  private static final int FAR_OFF = 1 << 28;

  private final boolean mirrored;
  private final int[] minutes;
  private final int[][] things;
  private final int[][] demands;
  private final CountTimeline[] timelines;
  private final Ties ties;

  private final int[] start;
  private final int[] notBefore;
  private final int[] fromZeroOn;
  private final int[] placed;
  private int placedCount;
  private int repairsLeft;
  private int stuck = -1;
  private int blocker = Timeline.NOBODY;

  private InnerDecoder(InnerProblem problem, boolean mirrored) {
    this.mirrored = mirrored;
    int count = problem.steps().size();
    minutes = problem.steps().stream().mapToInt(InnerProblem.Step::minutes).toArray();
    things = new int[count][];
    demands = new int[count][];
    for (int step = 0; step < count; step++) {
      List<Integer> all = problem.steps().get(step).demands();
      boolean lasts = minutes[step] > 0;
      things[step] = IntStream.range(0, all.size())
          .filter(thing -> lasts && all.get(thing) > 0)
          .toArray();
      demands[step] = Arrays.stream(things[step]).map(all::get).toArray();
    }
    timelines = problem.capacities()
        .stream()
        .map(capacity -> new CountTimeline(0, FAR_OFF, capacity))
        .toArray(CountTimeline[]::new);
    ties = new Ties(problem);
    start = new int[count];
    notBefore = new int[count];
    fromZeroOn = new int[count];
    placed = new int[count];
  }

  /** Decodes from zero on, each step as early as it fits. */
  public static InnerDecoder forward(InnerProblem problem) {
    return new InnerDecoder(problem, false);
  }

  /** Decodes back from zero, each step as late as it fits; moments are zero and below. */
  public static InnerDecoder backward(InnerProblem problem) {
    return new InnerDecoder(problem.mirrored(), true);
  }

  /**
   * Makes the plan of an order.
   *
   * @param order each step once
   * @return the minutes from the first start to the last end, or {@link #NO_PLAN}
   */
  public int decode(int[] order) {
    return decode(order, fromZeroOn);
  }

  /**
   * Makes the plan of an order where some steps are held back.
   *
   * @param order each step once
   * @param heldBack for each step, how far from zero it may be at the nearest
   * @return the minutes from the first start to the last end, or {@link #NO_PLAN}
   */
  int decode(int[] order, int[] heldBack) {
    for (CountTimeline timeline : timelines) {
      timeline.clear();
    }
    Arrays.fill(start, UNPLACED);
    System.arraycopy(heldBack, 0, notBefore, 0, heldBack.length);
    placedCount = 0;
    repairsLeft = start.length;
    stuck = ties.contradicted;
    blocker = stuck;
    while (stuck < 0 && placedCount < order.length) {
      placeAll(order);
    }
    return stuck < 0 ? makespan() : NO_PLAN;
  }

  /** The steps that may come too soon for another: those a greatest gap ties to one placed after them. */
  int[] thatMayWait() {
    return IntStream.range(0, start.length)
        .filter(step -> IntStream.range(0, start.length).anyMatch(other -> ties.mayComeTooSoon(step, other)))
        .toArray();
  }

  /** When a step of the last plan starts. */
  public int start(int step) {
    return mirrored ? -start[step] - minutes[step] : start[step];
  }

  /** The step that found no place in the last order; or -1 if there was a plan. */
  public int stuck() {
    return stuck;
  }

  /**
   * What kept the stuck step from starting in time: the step that takes what it needs, or, if none
   * does, the one whose gap it would break; {@link Timeline#HOURS} if there is not enough at all.
   */
  public int blocker() {
    return blocker;
  }

  private void placeAll(int[] order) {
    for (int step : order) {
      if (start[step] == UNPLACED && !place(step)) {
        return;
      }
    }
  }

  /** Places a step after what it waits for; false when something had to be taken up again. */
  private boolean place(int step) {
    for (int first : ties.before[step]) {
      if (start[first] == UNPLACED && !place(first)) {
        return false;
      }
    }
    int wanted = earliest(step);
    int found = firstFit(step, wanted);
    if (found == Timeline.NONE) {
      stuck = step;
      return false;
    }
    if (ties.later[step].length > 0 && !isInTime(step, found)) {
      return false;
    }
    set(step, found);
    return true;
  }

  private int earliest(int step) {
    int earliest = notBefore[step];
    int[] others = ties.earlier[step];
    int[] lags = ties.earlierLag[step];
    for (int i = 0; i < others.length; i++) {
      if (start[others[i]] != UNPLACED) {
        earliest = Math.max(earliest, start[others[i]] + lags[i]);
      }
    }
    return earliest;
  }

  /** The first moment from then on at which all things it needs are free, or NONE. */
  private int firstFit(int step, int from) {
    int[] needed = things[step];
    int found = from;
    int agreed = 0;
    blocker = Timeline.NOBODY;
    for (int i = 0; agreed < needed.length; i = i + 1 == needed.length ? 0 : i + 1) {
      CountTimeline timeline = timelines[needed[i]];
      int next = timeline.earliestStart(found, minutes[step], demands[step][i]);
      agreed = next == found ? agreed + 1 : 1;
      if (next == Timeline.NONE) {
        blocker = timeline.blocker();
        return next;
      }
      found = next;
    }
    return found;
  }

  /** Whether no greatest gap is broken; if one is, those that limit the step are taken up again. */
  private boolean isInTime(int step, int found) {
    int[] others = ties.later[step];
    int[] lags = ties.laterLag[step];
    int cut = Integer.MAX_VALUE;
    int limiting = -1;
    for (int i = 0; i < others.length; i++) {
      int limited = start[others[i]];
      if (limited != UNPLACED && limited < found + lags[i]) {
        notBefore[others[i]] = found + lags[i];
        if (limited < cut) {
          cut = limited;
          limiting = others[i];
        }
      }
    }
    if (limiting < 0) {
      return true;
    }
    if (repairsLeft-- == 0) {
      stuck = step;
      blocker = inTheWay(step, found, limiting);
    } else {
      takeUpFrom(cut);
    }
    return false;
  }

  private int inTheWay(int step, int found, int limiting) {
    boolean held = found == earliest(step);
    for (int i = 0; !held && i < things[step].length; i++) {
      CountTimeline timeline = timelines[things[step][i]];
      if (timeline.earliestStart(found - 1, minutes[step], demands[step][i]) >= found) {
        return timeline.blocker();
      }
    }
    return limiting;
  }

  private void takeUpFrom(int cut) {
    for (CountTimeline timeline : timelines) {
      timeline.clear();
    }
    int count = placedCount;
    placedCount = 0;
    for (int i = 0; i < count; i++) {
      int step = placed[i];
      if (start[step] >= cut) {
        start[step] = UNPLACED;
      } else {
        set(step, start[step]);
      }
    }
  }

  private void set(int step, int moment) {
    start[step] = moment;
    placed[placedCount++] = step;
    for (int i = 0; i < things[step].length; i++) {
      timelines[things[step][i]].take(moment, moment + minutes[step], demands[step][i], step);
    }
  }

  private int makespan() {
    int first = Integer.MAX_VALUE;
    int last = Integer.MIN_VALUE;
    for (int step = 0; step < start.length; step++) {
      first = Math.min(first, start[step]);
      last = Math.max(last, start[step] + minutes[step]);
    }
    return start.length == 0 ? 0 : last - first;
  }
}
