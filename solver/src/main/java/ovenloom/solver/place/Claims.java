package ovenloom.solver.place;

import java.util.List;
import java.util.Objects;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.menu.Keeps;
import ovenloom.solver.timeline.Timeline;

/** Takes for a run what it needs, at a start where there is room. */
final class Claims {

  private final Runs runs;
  private final Floor floor;
  private final Draft draft;
  private final Wants wants;
  private final Loads loads;
  private final Bonds bonds;

  Claims(Runs runs, Floor floor, Draft draft, Wants wants, Bonds bonds) {
    this.runs = runs;
    this.floor = floor;
    this.draft = draft;
    this.wants = wants;
    this.bonds = bonds;
    loads = new Loads(runs);
  }

  /** Takes all for a run from its start on, or nothing if hands or vessels are short after all. */
  boolean take(Request request, int start) {
    boolean room = takePeopleAndVessels(request, start);
    if (room) {
      takePlaces(request, start);
    }
    return room;
  }

  /** Takes place and vessels of a run from sooner on than its start was, or nothing if there is no room. */
  boolean takeSooner(Run run, int start) {
    int was = draft.start[run.index()];
    boolean room = hasPlaceFrom(run, start, was) && takeVesselsFrom(run, start);
    if (room) {
      takePlaceFrom(run, start, was);
    }
    return room;
  }

  /** Hands first, so that no wash is put where the run itself needs them. */
  private boolean takePeopleAndVessels(Request request, int start) {
    Run run = request.run();
    int[] cooks = floor.crew.marks();
    boolean room = takeHands(request, start) && takeVessels(run, start, start + request.minutes());
    if (!room) {
      floor.crew.rollback(cooks);
    }
    return room;
  }

  /** Takes all its vessels or none; washes that were put in are the crew's to roll back. */
  private boolean takeVessels(Run run, int start, int end) {
    List<Wants.Filling> all = wants.fillings(run);
    VesselPool.State[] states = new VesselPool.State[all.size()];
    for (int i = 0; i < states.length; i++) {
      states[i] = floor.pool(all.get(i).fill()).state();
    }
    for (Wants.Filling filling : all) {
      Fill fill = filling.fill();
      int last = Math.max(end, lastEnd(fill));
      if (!floor.pool(fill).take(filling.number(), fill.count(), start, last)) {
        for (int i = 0; i < states.length; i++) {
          floor.pool(all.get(i).fill()).back(states[i]);
        }
        return false;
      }
    }
    return true;
  }

  private int lastEnd(Fill fill) {
    if (fill.endOfService() != Fill.EMPTIED) {
      return fill.endOfService();
    }
    int last = Timeline.NONE;
    for (int user : fill.users()) {
      last = draft.placed[user] ? Math.max(last, draft.end[user]) : last;
    }
    return last;
  }

  private boolean takeHands(Request request, int start) {
    Run run = request.run();
    Crew.Taken[] taken = new Crew.Taken[request.all().size()];
    for (int i : wants.hardestFirst(request)) {
      HandsNeed need = request.all().get(i);
      boolean later = request.stays() && need.equals(run.unloading());
      int minutes = later ? need.minutes() : request.minutes();
      int from = later ? request.until() - minutes : start;
      Crew.Taken hands = floor.crew.take(from, run, need, minutes, request.door());
      if (hands == null) {
        return false;
      }
      taken[i] = hands;
    }
    draft.hands[run.index()] = taken;
    return true;
  }

  private void takePlaces(Request request, int start) {
    Run run = request.run();
    int i = run.index();
    int end = start + request.minutes();
    draft.start[i] = start;
    draft.end[i] = end;
    if (run.footing().onTheWorktop() && !run.pieces().isEmpty()) {
      floor.landing.take(start, end, run.pieces().size(), i);
    }
    for (int appliance : wants.appliances(run)) {
      floor.appliances[appliance].take(start, end, 1, i);
    }
    if (run.footing().onABurner()) {
      takeBurners(run, start, end);
    }
    if (run.footing().onAShelf()) {
      takeShelves(run, start, end);
    }
    if (request.choice() != null) {
      takeOven(request, start);
    }
  }

  private void takeOven(Request request, int start) {
    Run run = request.run();
    BakeChoice choice = request.bakeFrom(start);
    int end = request.leaves(start);
    floor.dials[choice.oven()].take(start, choice.bake(), run.index());
    Tiers racks = floor.racks[choice.oven()];
    int[] found = Objects.requireNonNull(racks.room(start, end, run.pieces(), choice.racks(), 0));
    racks.take(start, end, run.pieces(), found, 0, run.index());
    draft.racks[run.index()] = found;
    draft.choice[run.index()] = choice;
  }

  /** Rather burners on which the pots may stay when the step is over; the largest pot chooses first. */
  private void takeBurners(Run run, int start, int end) {
    BurnerSize[] pots = wants.pots(run);
    int[] taken = new int[pots.length];
    int leaves = run.step().keeps() != null && run.step().keeps().burner() != null ? leaves(run, end) : end;
    for (int pot : wants.largestFirst(run)) {
      taken[pot] = burner(run, pots[pot], start, leaves);
      taken[pot] = taken[pot] < 0 ? burner(run, pots[pot], start, end) : taken[pot];
      floor.burners[taken[pot]].take(start, end, 1, run.index());
    }
    draft.burners[run.index()] = taken;
  }

  /** The smallest burner for a pot that is free over a stretch; below 0 if there is none. */
  private int burner(Run run, BurnerSize size, int from, int to) {
    for (int burner : wants.burners(run)) {
      if (floor.size(burner).compareTo(size) >= 0 && floor.burners[burner].fits(from, to, 1)) {
        return burner;
      }
    }
    return -1;
  }

  /** Rather a shelf on which the food may stay when the step is over. */
  private void takeShelves(Run run, int start, int end) {
    int leaves = leaves(run, end);
    boolean taken = takeShelves(run, start, end, leaves, true) || takeShelves(run, start, end, end, true)
        || takeShelves(run, start, end, leaves, false);
    if (!taken) {
      takeShelves(run, start, end, end, false);
    }
  }

  /** Whether its food need not be taken out as soon as the step is over. */
  private boolean mayStay(Run run, int store) {
    Keeps keeps = run.step().keeps();
    return keeps == null || keeps.stores().isEmpty()
        || keeps.stores().containsKey(runs.event().kitchen().stores().get(store).name());
  }

  /** @param light only where not much else goes in within the hour */
  private boolean takeShelves(Run run, int start, int end, int to, boolean light) {
    for (int store : wants.stores(run)) {
      List<Integer> tiers = wants.tiers(run, store);
      boolean better = mayStay(run, store) && loads.takes(draft, run.index(), store, start);
      int[] found = light && !better ? null
          : floor.stores[store].room(start, to, run.pieces(), tiers, run.requires());
      if (found != null) {
        floor.stores[store].take(start, end, run.pieces(), found, run.requires(), run.index());
        draft.store[run.index()] = store;
        draft.shelves[run.index()] = found;
        return true;
      }
    }
    return false;
  }

  private int leaves(Run run, int end) {
    int leaves = end;
    for (int wait : bonds.waits(run.index())) {
      for (Wait.Taker taker : runs.waits().get(wait).takers()) {
        leaves = Math.max(leaves, draft.taken(taker));
      }
    }
    return leaves;
  }

  private boolean hasPlaceFrom(Run run, int start, int was) {
    int[] shelves = draft.shelves[run.index()];
    if (!run.footing().onAShelf()) {
      return floor.landing.fits(start, was, run.pieces().size());
    }
    return shelves != null
        && floor.stores[draft.store[run.index()]].hasRoom(start, was, run.pieces(), shelves, run.requires());
  }

  private boolean takeVesselsFrom(Run run, int start) {
    int[] cooks = floor.crew.marks();
    boolean room = takeVessels(run, start, draft.end[run.index()]);
    if (!room) {
      floor.crew.rollback(cooks);
    }
    return room;
  }

  private void takePlaceFrom(Run run, int start, int was) {
    int[] shelves = draft.shelves[run.index()];
    if (!run.footing().onAShelf()) {
      floor.landing.take(start, was, run.pieces().size(), run.index());
    } else if (shelves != null) {
      floor.stores[draft.store[run.index()]].take(
          start, was, run.pieces(), shelves, run.requires(), run.index());
    }
  }
}
