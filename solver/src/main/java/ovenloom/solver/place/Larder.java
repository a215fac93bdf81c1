package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Keeps;
import ovenloom.solver.timeline.Presence;
import ovenloom.solver.timeline.Timeline;

/** Finds where food waits: on the counter, on a shelf, in a hot place, on its burner turned low. */
final class Larder {

  /** A hot dish may stand this long before it is the worse for it, minutes. */
  private static final int STILL_HOT = 10;

  /** Food that keeps on the counter goes to the fridge only if it waits longer than this, minutes. */
  private static final int WORTH_A_TRIP = 60;

  private final Runs runs;
  private final Floor floor;
  private final Draft draft;
  private final Presence there;
  private final Keeping keeping;
  private final Spots spots;

  Larder(Runs runs, Floor floor, Draft draft, Spots spots) {
    this.runs = runs;
    this.floor = floor;
    this.draft = draft;
    there = floor.crew.there();
    keeping = new Keeping(runs, draft);
    this.spots = spots;
  }

  /**
   * The stay of a run's food in its oven, if that was decided for it or is all it may; else null. All its batches have to be
   * taken at one moment, for then the oven is opened.
   */
  @Nullable
  OvenStay stayInItsOven(Run run, List<Integer> waits, Decisions decisions) {
    OvenStay stay = null;
    for (int number : waits) {
      Spots.Spot spot = inItsOven(number, spots.step(waits.getFirst()), decisions);
      if (spot == null || spot.kind() != WaitPart.Kind.OVEN) {
        return null;
      }
      OvenStay its = new OvenStay(lastTaken(runs.waits().get(number)), spot.place() == Spots.OFF);
      if (stay != null && !stay.equals(its)) {
        return null;
      }
      stay = its;
    }
    return stay;
  }

  /** Where it is to wait; in its oven, switched off, what is done early and keeps nowhere else. */
  private Spots.@Nullable Spot inItsOven(int number, int step, Decisions decisions) {
    Wait wait = runs.waits().get(number);
    Spots.Spot spot = spots.decided(number, decisions.stay(step));
    boolean early = decisions.earlier(step) > Keeps.FREE_ON_THE_COUNTER;
    return spot == null && early && spots.staysInItsOven(wait) && keepsNowhereElse(wait.keeps())
        ? new Spots.Spot(WaitPart.Kind.OVEN, Spots.OFF)
        : spot;
  }

  private static boolean keepsNowhereElse(Keeps keeps) {
    return keeps.counter() == null && keeps.burner() == null && keeps.stores().isEmpty();
  }

  private int lastTaken(Wait wait) {
    return wait.takers().stream().mapToInt(draft::taken).max().orElse(Timeline.NONE);
  }

  /** Keeps the food of a wait from the end of its run until the last of it is taken. */
  void keep(int number, Decisions decisions) {
    Wait wait = runs.waits().get(number);
    int from = draft.end[wait.run()];
    int to = from;
    for (Wait.Taker taker : wait.takers()) {
      to = Math.max(to, draft.taken(taker));
      if (taker.run() == Wait.TABLE && !there.openAt(taker.due())) {
        draft.fallsShort(wait.run(), 1);
      }
    }
    if (to == from) {
      return;
    }
    boolean held = draft.outOfTheOven(wait.run()) > from;
    Spots.Spot spot = spots.decided(number, decisions.stay(spots.step(number)));
    List<WaitPart> found = held ? keptInItsOven(wait, from, to) : null;
    found = spot == null || found != null ? found : inSpot(wait, spot, from, to);
    found = found == null ? find(number, from, to) : found;
    if (found == null) {
      found = List.of(WaitPart.onTheCounter(from, to));
      draft.waitsTooLong(wait.run(), Math.max(1, keeping.worstExcess(wait, found)));
    }
    for (WaitPart part : found) {
      take(wait, part);
    }
    draft.waits.set(number, found);
  }

  private @Nullable List<WaitPart> find(int number, int from, int to) {
    Wait wait = runs.waits().get(number);
    boolean hot = runs.runs().get(wait.run()).dish().arrives() == Arrives.HOT;
    List<WaitPart> found = null;
    if (hot && to - from > STILL_HOT) {
      found = inOneHotPlace(number, from, to);
      found = found == null ? onItsBurners(wait, from, to) : found;
    }
    if (found == null && to - from <= WORTH_A_TRIP) {
      found = onTheCounter(wait, from, to);
    }
    found = found == null ? inOneColdPlace(number, from, to) : found;
    found = found == null ? onTheCounter(wait, from, to) : found;
    found = found == null ? inOneHotPlace(number, from, to) : found;
    return found == null ? onItsBurners(wait, from, to) : found;
  }

  private @Nullable List<WaitPart> inSpot(Wait wait, Spots.Spot spot, int from, int to) {
    return switch (spot.kind()) {
      case COUNTER -> onTheCounter(wait, from, to);
      case BURNER -> onItsBurners(wait, from, to);
      case OVEN -> null;
      case STORE -> runs.event().kitchen().stores().get(spot.place()).kind().isCold()
          ? inColdPlace(wait, spot.place(), from, to)
          : inHotPlace(wait, spot.place(), from, to);
    };
  }

  private List<WaitPart> keptInItsOven(Wait wait, int from, int to) {
    List<WaitPart> parts = List.of(WaitPart.inItsOven(from, to));
    int excess = keeping.worstExcess(wait, parts);
    if (excess > 0) {
      draft.waitsTooLong(wait.run(), excess);
    }
    return parts;
  }

  private @Nullable List<WaitPart> onTheCounter(Wait wait, int from, int to) {
    List<WaitPart> parts = List.of(WaitPart.onTheCounter(from, to));
    boolean room = !staysOnItsShelf(wait, from) && floor.landing.fits(from, to, wait.pieces().size());
    return room && keeping.worstExcess(wait, parts) <= 0 ? parts : null;
  }

  /** Whether its step had it on a shelf, and nobody is there to take it off. */
  private boolean staysOnItsShelf(Wait wait, int moment) {
    return draft.shelves[wait.run()] != null && !there.openAt(moment);
  }

  private @Nullable List<WaitPart> onItsBurners(Wait wait, int from, int to) {
    int[] burners = draft.burners[wait.run()];
    if (burners == null || wait.keeps().burner() == null || !there.openAt(from)) {
      return null;
    }
    for (int burner : burners) {
      if (!floor.burners[burner].fits(from, to, 1)) {
        return null;
      }
    }
    List<WaitPart> parts = List.of(WaitPart.onBurners(burners, from, to));
    return keeping.worstExcess(wait, parts) <= 0 ? parts : null;
  }

  private @Nullable List<WaitPart> inOneHotPlace(int number, int from, int to) {
    for (int store : spots.hot(number)) {
      List<WaitPart> parts = inHotPlace(runs.waits().get(number), store, from, to);
      if (parts != null) {
        return parts;
      }
    }
    return null;
  }

  private @Nullable List<WaitPart> inHotPlace(Wait wait, int store, int from, int to) {
    return there.openAt(from) || staysThere(wait, store, from, to) ? inStore(wait, store, from, from, to, to)
        : null;
  }

  private @Nullable List<WaitPart> inOneColdPlace(int number, int from, int to) {
    for (int store : spots.cold(number)) {
      List<WaitPart> parts = inColdPlace(runs.waits().get(number), store, from, to);
      if (parts != null) {
        return parts;
      }
    }
    return null;
  }

  /** There until it is taken, or until others need the room, as far as it keeps on the counter from then on. */
  private @Nullable List<WaitPart> inColdPlace(Wait wait, int store, int from, int to) {
    int leaves = there.latestMoment(to);
    int moved = staysThere(wait, store, from, leaves) ? from : firstMoment(from);
    int soonest = Math.max(moved + 1, to - Keeps.FREE_ON_THE_COUNTER - longestOnTheCounter(wait));
    List<WaitPart> found = null;
    while (found == null && leaves >= soonest) {
      found = inStore(wait, store, from, moved, leaves, to);
      leaves = there.latestMoment(floor.stores[store].lastWantedBefore(moved, leaves));
    }
    return found;
  }

  private static int longestOnTheCounter(Wait wait) {
    int longest = 0;
    for (Wait.Taker taker : wait.takers()) {
      longest = Math.max(longest, wait.onTheCounter(taker));
    }
    return longest;
  }

  /** Whether it may stay where its step had it. */
  private boolean staysThere(Wait wait, int store, int from, int to) {
    int[] same = standing(wait, store);
    return same != null
        && floor.stores[store].hasRoom(
            from, to, wait.pieces(), same, runs.runs().get(wait.run()).requires());
  }

  /** The first moment, not before this one, at which someone is there. */
  private int firstMoment(int notBefore) {
    for (int i = 0; i < there.stretches(); i++) {
      if (there.closes(i) >= notBefore) {
        return Math.max(notBefore, there.opens(i));
      }
    }
    return Integer.MAX_VALUE;
  }

  private @Nullable List<WaitPart> inStore(Wait wait, int store, int from, int moved, int leaves, int to) {
    int[] shelves = shelves(wait, store, moved, leaves);
    if (shelves == null || (from < moved && staysOnItsShelf(wait, from))) {
      return null;
    }
    List<WaitPart> parts = new ArrayList<>();
    if (from < moved) {
      parts.add(WaitPart.onTheCounter(from, moved));
    }
    parts.add(WaitPart.inStore(store, shelves, moved, leaves));
    if (leaves < to) {
      parts.add(WaitPart.onTheCounter(leaves, to));
    }
    for (WaitPart part : parts) {
      if (part.kind() == WaitPart.Kind.COUNTER
          && !floor.landing.fits(part.from(), part.to(), wait.pieces().size())) {
        return null;
      }
    }
    return keeping.worstExcess(wait, parts) <= 0 ? parts : null;
  }

  /** Shelves for all pieces; those it stands on already, if they will do. */
  private int @Nullable [] shelves(Wait wait, int store, int from, int to) {
    long requires = runs.runs().get(wait.run()).requires();
    Tiers tiers = floor.stores[store];
    int[] same = standing(wait, store);
    if (same != null && tiers.hasRoom(from, to, wait.pieces(), same, requires)) {
      return same;
    }
    List<Integer> order = new ArrayList<>();
    for (int tier = 0; tier < tiers.size(); tier++) {
      order.add(requires > 0 ? tiers.size() - 1 - tier : tier);
    }
    return tiers.room(from, to, wait.pieces(), order, requires);
  }

  /** The shelves that the step's run has these pieces on, in this store. */
  private int @Nullable [] standing(Wait wait, int store) {
    int[] shelves = draft.shelves[wait.run()];
    if (shelves == null || draft.store[wait.run()] != store) {
      return null;
    }
    Run run = runs.runs().get(wait.run());
    int before = (wait.batches().first() - run.batches().first()) * wait.pieces().size();
    int count = Math.max(1, wait.pieces().size());
    return before + count > shelves.length ? null : Arrays.copyOfRange(shelves, before, before + count);
  }

  private void take(Wait wait, WaitPart part) {
    int owner = wait.run();
    switch (part.kind()) {
      case COUNTER -> floor.landing.take(part.from(), part.to(), wait.pieces().size(), owner);
      case STORE -> floor.stores[part.place()].take(
          part.from(), part.to(), wait.pieces(), part.allLevels(), runs.runs().get(owner).requires(), owner);
      case OVEN -> {
        // The bake took it.
      }
      case BURNER -> {
        for (int burner : part.allLevels()) {
          floor.burners[burner].take(part.from(), part.to(), 1, owner);
        }
      }
    }
  }
}
