package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.menu.Link;

/**
 * Turns an order of runs into a plan: each run is placed as late as it fits, the runs that wait for it first.
 *
 * <p>Belongs to one thread, and hands out the same draft again and again.
 */
public final class Decoder {

  /** How often all is placed again for food that goes in colder or warmer than was thought. */
  private static final int AGAIN = 2;

  private final Runs runs;
  private final Floor floor;
  private final Draft draft;
  private final Fitting fitting;
  private final Spots spots;
  private final Larder larder;
  private final StraightOn straightOn;
  private final Circuits circuits;
  private final ColdStarts coldStarts;
  private final Traces traces;
  private final Errands errands;
  private final WashUp washUp;
  private final Interruptions interruptions;
  private final Bonds bonds;
  private final Sequence sequence;
  private final int[] leastMinutes;

  /** A decoder for an event laid out as runs. */
  public Decoder(Runs runs) {
    this(runs, new ColdStarts(runs));
  }

  /** One that has somebody look how warm the food is. */
  Decoder(Runs runs, ColdStarts coldStarts) {
    this.runs = runs;
    this.coldStarts = coldStarts;
    bonds = new Bonds(runs);
    sequence = new Sequence(runs, bonds);
    floor = new Floor(runs);
    draft = new Draft(runs);
    fitting = new Fitting(runs, floor, draft, bonds);
    spots = new Spots(runs);
    larder = new Larder(runs, floor, draft, spots);
    straightOn = new StraightOn(runs, draft, fitting, spots, bonds);
    circuits = new Circuits(runs);
    traces = new Traces(runs);
    errands = new Errands(runs);
    washUp = new WashUp(runs.event(), floor.crew);
    interruptions = new Interruptions(runs);
    leastMinutes = runs.runs().stream().mapToInt(fitting::leastMinutes).toArray();
  }

  /** The ways to bake a step; none for one that is no bake. */
  public List<BakeChoice> waysToBake(int step) {
    return fitting.waysToBake(runs.runs().get(runs.runOf().get(step)));
  }

  /** How many starts a step may have, from cold to hot; 1 where there is no choice. */
  public int startsOf(int step) {
    return fitting.starts(runs.runs().get(runs.runOf().get(step)));
  }

  /** How many sorts of places the food of a step may wait in; 0 where it never waits. */
  public int waysToWait(int step) {
    int ways = 0;
    for (int wait : bonds.waits(runs.runOf().get(step))) {
      ways = Math.max(ways, spots.ways(wait, step));
    }
    return ways;
  }

  /** The last of these ways: its food is not left waiting, who takes it is done right after. OPEN where only the table takes it. */
  public int takenAtOnce(int step) {
    for (int wait : bonds.waits(runs.runOf().get(step))) {
      if (spots.ways(wait, step) > 0) {
        return spots.takenAtOnce(wait);
      }
    }
    return Decisions.OPEN;
  }

  /** A number that decisions have in common only, but for odd chance, if the same plan follows from them, with batches that share runs as here. */
  public long print(Decisions decisions) {
    sequence.set(decisions);
    return sequence.print(decisions);
  }

  /**
   * The plan that follows from what was decided. Where food turns out to go in colder or warmer than was thought, all is placed
   * again with minutes for that.
   */
  public Draft decode(Decisions decisions) {
    sequence.set(decisions);
    for (int step = 0; step < draft.starts.length; step++) {
      draft.starts[step] = decisions.start(step);
    }
    placeAll(decisions);
    for (int again = 0; again < AGAIN && coldStarts.settle(draft, fitting); again++) {
      placeAll(decisions);
    }
    washUp();
    circuits.check(draft);
    coldStarts.check(draft);
    traces.check(draft);
    errands.check(draft);
    draft.interruptions = interruptions.of(draft);
    return draft;
  }

  private void placeAll(Decisions decisions) {
    floor.clear();
    draft.clear();
    for (int entry = 0; entry < sequence.size(); entry++) {
      place(sequence.get(entry), decisions);
    }
    coldStarts.follow(draft);
  }

  private void place(int entry, Decisions decisions) {
    Run run = runs.runs().get(entry < 0 ? ~entry : entry);
    if (entry < 0) {
      settle(run, decisions);
    } else if (run.step().serve()) {
      serve(run, decisions);
    } else {
      placeBefore(run, decisions);
    }
  }

  private void washUp() {
    for (VesselPool pool : floor.vessels) {
      for (int i = 0; pool != null && i < pool.washes(); i++) {
        VesselPool.Done wash = pool.wash(i);
        if (wash.pieces() > 0) {
          draft.washes.add(washUp.sooner(wash, pool.dirty(i)));
        }
      }
    }
  }

  /** What is cooked is placed back from the table, after all that follows it. */
  private void placeBefore(Run placing, Decisions decisions) {
    int run = placing.index();
    int step = placing.units().getFirst().index();
    OvenStay stay = larder.stayInItsOven(placing, bonds.waits(run), decisions);
    int end = straightOn.latestEnd(placing, latestEnd(placing) - decisions.earlier(step), decisions);
    fitting.place(placing, end, draft.starts[step], decisions.bake(step), stay);
    draft.placed[run] = true;
    settle(placing, decisions);
  }

  /** What is served is placed on from the table time, after all that is served before it. */
  private void serve(Run serving, Decisions decisions) {
    int run = serving.index();
    int earliest = earliestStart(serving, bonds.batchBefore(run));
    int slack = Math.max(0, serving.endOfService() - serving.minutes() - earliest);
    int late = Math.min(slack, decisions.earlier(serving.units().getFirst().index()));
    fitting.serve(serving, earliest + late);
    draft.placed[run] = true;
  }

  private boolean isServed(int run) {
    return runs.runs().get(run).step().serve();
  }

  private int earliestStart(Run serving, int batch) {
    int earliest = batch < 0 ? serving.due() : Math.max(serving.due(), draft.end[batch] - serving.minutes());
    for (Tie tie : bonds.before(serving.index())) {
      if (isServed(tie.earlier())) {
        boolean alongside = tie.link().kind() == Link.Kind.ALONGSIDE;
        int from = alongside ? draft.start[tie.earlier()] : draft.end[tie.earlier()] + tie.link().least();
        earliest = Math.max(earliest, from);
      }
    }
    return earliest;
  }

  private void settle(Run placed, Decisions decisions) {
    int run = placed.index();
    meetLinks(placed);
    for (int wait : bonds.waits(run)) {
      larder.keep(wait, decisions);
    }
  }

  private int latestEnd(Run run) {
    int latest = run.due();
    for (Tie tie : bonds.after(run.index())) {
      latest = Math.min(latest, latestEnd(run, tie));
    }
    int next = bonds.nextBatch(run.index());
    int end = traces.latestEnd(run, next < 0 ? latest : Math.min(latest, draft.end[next]), draft);
    return errands.latestEnd(run, end, leastMinutes[run.index()], draft);
  }

  private int latestEnd(Run run, Tie tie) {
    int start = draft.start[tie.later()];
    return switch (tie.link().kind()) {
      case FOOD, ORDER_ONLY -> start - tie.link().least();
      case ALONGSIDE -> start + leastMinutes[run.index()];
    };
  }

  /** Where a run came out too early for what follows it, lets what follows begin sooner if it may, else falls short. */
  private void meetLinks(Run run) {
    int end = draft.end[run.index()];
    for (Tie tie : bonds.after(run.index())) {
      if (tie.link().kind() == Link.Kind.ALONGSIDE) {
        fallShortBy(run, draft.start[tie.later()] + 1 - end);
      } else {
        Run later = runs.runs().get(tie.later());
        if (draft.start[tie.later()] > draft.outOfTheOven(run.index()) && later.stretches()
            && isFedByThisAlone(tie)) {
          fitting.beginSooner(later, end + tie.link().least());
        }
        Integer most = tie.link().most();
        if (most != null) {
          int over = draft.start[tie.later()] - end - most;
          if (over > 0) {
            draft.waitsTooLong(run.index(), over);
          }
        }
      }
      fallShortBy(
          run,
          tie.link().kind() == Link.Kind.ALONGSIDE ? 0 : end + tie.link().least() - draft.start[tie.later()]);
    }
  }

  private boolean isFedByThisAlone(Tie tie) {
    return bonds.before(tie.later()).size() == 1;
  }

  private void fallShortBy(Run run, int minutes) {
    if (minutes > 0) {
      draft.fallsShort(run.index(), minutes);
    }
  }
}
