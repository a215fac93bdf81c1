package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.life.MeanWarmth;
import ovenloom.solver.timeline.Timeline;

/** What the decoder decided so far: a plan in numbers, and how far it is from keeping the rules. */
public final class Draft {

  final Runs runs;
  final int[] start;
  final int[] end;
  final boolean[] placed;
  final int[] blocker;
  final @Nullable Scarce[] scarce;
  final @Nullable BakeChoice[] choice;
  final int[] @Nullable [] racks;
  final int[][] burners;
  final int[] store;
  final int[][] shelves;
  final Crew.Taken[][] hands;
  final List<List<WaitPart>> waits;
  final List<VesselPool.Done> washes = new ArrayList<>();
  final int[] overcooked;
  final int[] starts;
  final double[] begins;
  private final MeanWarmth.Timetable timetable;
  private final long[] shortOf;
  private final int[] tooLong;
  private long shortfall;
  int interruptions;

  Draft(Runs runs) {
    this.runs = runs;
    int all = runs.runs().size();
    start = new int[all];
    end = new int[all];
    placed = new boolean[all];
    blocker = new int[all];
    scarce = new Scarce[all];
    shortOf = new long[all];
    tooLong = new int[all];
    choice = new BakeChoice[all];
    racks = new int[all][];
    burners = new int[all][];
    store = new int[all];
    shelves = new int[all][];
    hands = new Crew.Taken[all][];
    waits = new ArrayList<>();
    runs.waits().forEach(wait -> waits.add(List.of()));
    overcooked = new int[all];
    starts = new int[runs.work().steps().size()];
    begins = new double[starts.length];
    timetable = new DraftTimes(this);
  }

  /** Decides of how cold food goes into each bake what came out, so that it is placed at once the next time. */
  public void tellStarts(Decisions decisions) {
    for (int step = 0; step < starts.length; step++) {
      decisions.setStart(step, starts[step]);
    }
  }

  /** How warm the food of each step is as it begins, C, by the step's index; the draft's own, and good until it is used again. */
  public double[] begins() {
    return begins;
  }

  /** When its steps run, and where their food waits. */
  public MeanWarmth.Timetable timetable() {
    return timetable;
  }

  /** Notes that a rule could not be kept, and by how much. */
  void fallsShort(long by) {
    shortfall += BREAK + by;
  }

  /** Notes that a run could not keep a rule, and by how much. */
  void fallsShort(int run, long by) {
    fallsShort(by);
    shortOf[run] += BREAK + by;
  }

  /** Notes that food of a run would be too little or too much baked, or not be safe, and by how much. */
  void isOff(int run, long by) {
    shortfall += by;
    shortOf[run] += by;
  }

  /** What a break costs on top of how far off it is. */
  private static final int BREAK = 30;

  /** 0 for a plan that keeps every rule the decoder knows; else a sum that shrinks as it gets nearer. */
  public long shortfall() {
    return shortfall;
  }

  /** Notes that a run's food waits too long for those who take it, and by how much. */
  void waitsTooLong(int run, int by) {
    fallsShort(run, by);
    tooLong[run] = Math.max(tooLong[run], by);
  }

  /** Notes that it is for a run's wait most that food is left out too long in all, and by how much; the whole is noted where it is. */
  void leavesOutTooLong(int run, int by) {
    shortOf[run] += by;
    tooLong[run] = Math.max(tooLong[run], by);
  }

  /** Minutes that the food of a run waits too long, or is left out too long with all that it is made of; else 0. */
  public int tooLong(int run) {
    return tooLong[run];
  }

  /** Moments at which food is carried and nobody's hands are free. */
  public int interruptions() {
    return interruptions;
  }

  /** What a run has to do with it; of some more than one run has. */
  public long shortfall(int run) {
    return shortOf[run];
  }

  public Runs runs() {
    return runs;
  }

  public int start(int run) {
    return start[run];
  }

  public int end(int run) {
    return end[run];
  }

  /** Whose hands a run needs, baked as it is. */
  List<HandsNeed> handsNeeded(int run) {
    BakeChoice chosen = choice[run];
    return chosen == null ? runs.runs().get(run).hands() : chosen.hands();
  }

  /** When a run's food leaves the oven it was baked in. */
  int outOfTheOven(int run) {
    BakeChoice chosen = choice[run];
    return end[run] + (chosen == null ? 0 : chosen.held());
  }

  /** When somebody takes food that waits. */
  int taken(Wait.Taker taker) {
    return taker.run() == Wait.TABLE ? taker.due() : start[taker.run()];
  }

  /** What kept a run from being later: another run's number, or one of the timelines' words for none. */
  public int blocker(int run) {
    return blocker[run];
  }

  /** What a run waited for the most; null if it got the start it asked for. */
  public @Nullable Scarce scarce(int run) {
    return scarce[run];
  }

  /** The parts of a wait, by its number. */
  public List<WaitPart> parts(int wait) {
    return waits.get(wait);
  }

  /** How many hands stretches a run has, of those that were found a cook. */
  public int handsOf(int run) {
    return hands[run] == null ? 0 : hands[run].length;
  }

  /** A hands stretch of a run, in the order of its needs. */
  public Crew.Taken hands(int run, int number) {
    return hands[run][number];
  }

  /** What the marks of a bake cost, off those that were written, and its minutes, above those needed; 0 for no bake. */
  public int settingPoints(int run) {
    BakeChoice chosen = choice[run];
    return chosen == null ? 0 : chosen.points() + overcooked[run];
  }

  /** The washes that were put in. */
  public List<VesselPool.Done> washes() {
    return List.copyOf(washes);
  }

  /** How many burners a run takes. */
  public int burnersOf(int run) {
    return burners[run] == null ? 0 : burners[run].length;
  }

  /** A burner a run takes, by its number in the kitchen's list. */
  public int burner(int run, int pot) {
    return burners[run][pot];
  }

  void clear() {
    Arrays.fill(placed, false);
    Arrays.fill(choice, null);
    Arrays.fill(racks, null);
    Arrays.fill(burners, null);
    Arrays.fill(shelves, null);
    Arrays.fill(hands, null);
    Arrays.fill(scarce, null);
    Arrays.fill(blocker, Timeline.NOBODY);
    for (int i = 0; i < waits.size(); i++) {
      waits.set(i, List.of());
    }
    washes.clear();
    shortfall = 0;
    Arrays.fill(shortOf, 0);
    Arrays.fill(tooLong, 0);
    Arrays.fill(overcooked, 0);
  }
}
