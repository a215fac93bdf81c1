package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.menu.Need;
import ovenloom.solver.timeline.CountTimeline;
import ovenloom.solver.timeline.Timeline;

/** Fits one run: asks the timelines of all it needs until they agree on a start, and takes what it needs. */
final class Fitting {

  /** Minutes of being earlier that one point of a setting is worth, when the decoder chooses a mark. */
  private static final int MINUTES_A_POINT = 10;

  private static final int TRIES_TO_WASH = 24;

  private final Runs runs;
  private final Floor floor;
  private final Draft draft;
  private final List<List<BakeChoice>> choices = new ArrayList<>();
  private final List<List<Fill>> fills = new ArrayList<>();
  private final List<int[]> fillNumbers = new ArrayList<>();
  private final List<int[]> appliances = new ArrayList<>();
  private final List<int[]> burnersFor = new ArrayList<>();
  private final List<int[]> storesFor = new ArrayList<>();
  private final List<List<Integer>> tiersOf = new ArrayList<>();
  private final int clock;
  private int blocker = Timeline.NOBODY;

  Fitting(Runs runs, Floor floor, Draft draft) {
    this.runs = runs;
    this.floor = floor;
    this.draft = draft;
    clock = runs.event().clock();
    BakeChoices bakes = new BakeChoices(runs.event());
    for (Run run : runs.runs()) {
      choices.add(bakes.of(run));
      addFills(run);
      appliances.add(run.step().appliances().stream().mapToInt(this::appliance).toArray());
      burnersFor.add(burners(run));
      Need.OnShelf shelf = run.step().shelf();
      storesFor.add(shelf == null ? new int[0] : shelf.stores().stream().mapToInt(this::store).toArray());
    }
    for (Tiers tiers : floor.stores) {
      List<Integer> down = new ArrayList<>();
      for (int tier = 0; tier < tiers.size(); tier++) {
        down.add(tier);
      }
      tiersOf.add(down);
    }
  }

  private void addFills(Run run) {
    List<Fill> found = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < runs.fillings().size(); i++) {
      Fill fill = runs.fillings().get(i);
      if (fill.users().contains(run.index()) && floor.vessels[fill.vessel()] != null) {
        found.add(fill);
        numbers.add(i);
      }
    }
    fills.add(found);
    fillNumbers.add(numbers.stream().mapToInt(Integer::intValue).toArray());
  }

  private int appliance(Need.OnAppliance need) {
    return runs.event().kitchen().appliances().indexOf(runs.event().kitchen().appliance(need.appliance()));
  }

  private int store(String name) {
    return runs.event().kitchen().stores().indexOf(runs.event().kitchen().store(name));
  }

  /** The burners that will do, the smallest first. */
  private int[] burners(Run run) {
    Need.OnBurner need = run.step().burner();
    if (need == null) {
      return new int[0];
    }
    List<Burner> all = runs.event().kitchen().burners();
    BurnerSize least = need.atLeast();
    for (Piece piece : run.pieces()) {
      least = piece.burner().compareTo(least) > 0 ? piece.burner() : least;
    }
    BurnerSize wanted = least;
    return all.stream()
        .filter(burner -> burner.size().compareTo(wanted) >= 0)
        .sorted((one, other) -> one.size().compareTo(other.size()))
        .mapToInt(all::indexOf)
        .toArray();
  }

  List<BakeChoice> choices(int run) {
    return choices.get(run);
  }

  /** Places a run as late as it fits with its end not after a moment. */
  void place(Run run, int latestEnd, int wanted) {
    int minutes = run.minutes();
    int notAfter = latestEnd - minutes;
    List<BakeChoice> all = choices.get(run.index());
    @Nullable
    BakeChoice best = null;
    int bestStart = Timeline.NONE;
    int bestBlocker = Timeline.NOBODY;
    if (all.isEmpty()) {
      bestStart = !run.footing().bakes() ? latest(run, null, notAfter) : Timeline.NONE;
      bestBlocker = blocker;
    }
    for (int i = 0; i < all.size(); i++) {
      BakeChoice choice = all.get(i);
      boolean asked = wanted < 0
          ? choice.asWritten() || floor.dials[choice.oven()].uses(choice.bake().setting(0))
          : i == wanted % all.size();
      if (asked) {
        int start = latest(run, choice, notAfter);
        if (start != Timeline.NONE && (best == null || worth(start, choice) > worth(bestStart, best))) {
          best = choice;
          bestStart = start;
          bestBlocker = blocker;
        }
      }
    }
    settle(run, best, bestStart, notAfter);
    draft.blocker[run.index()] = bestBlocker;
  }

  private static int worth(int start, BakeChoice choice) {
    return start - MINUTES_A_POINT * choice.points();
  }

  /** Serves a run as soon after its table time as it fits, and no sooner than the batch before it lets it. */
  void serve(Run run, int notBefore) {
    List<BakeChoice> all = choices.get(run.index());
    @Nullable
    BakeChoice choice = all.isEmpty() ? null : all.getFirst();
    for (int start = Math.max(run.due(), notBefore); start + run.minutes() <= run.endOfService(); start++) {
      if (latest(run, choice, start) == start) {
        settle(run, choice, start, start);
        return;
      }
    }
    settle(run, choice, Timeline.NONE, run.due());
  }

  private void settle(Run run, @Nullable BakeChoice choice, int start, int notAfter) {
    int on = start == Timeline.NONE ? start : onTheClock(run, choice, start);
    for (int tries = 0; tries < TRIES_TO_WASH && on != Timeline.NONE; tries++) {
      if (takePeopleAndVessels(run, choice, on)) {
        takePlaces(run, choice, on);
        return;
      }
      on = run.step().serve() ? Timeline.NONE : latest(run, choice, on - clock);
    }
    force(run, choice, notAfter);
  }

  /** Nothing fits: puts it where it would like to be and takes nothing. */
  private void force(Run run, @Nullable BakeChoice choice, int start) {
    int at = Math.max(start, floor.from);
    draft.start[run.index()] = at;
    draft.end[run.index()] = at + run.minutes();
    draft.choice[run.index()] = choice == null && !choices.get(run.index()).isEmpty()
        ? choices.get(run.index()).getFirst()
        : choice;
    draft.fallsShort(run.minutes() + Math.max(0, floor.from - start));
  }

  /** A whole step of the clock, if that fits as well and nothing is kept waiting that could not be before. */
  private int onTheClock(Run run, @Nullable BakeChoice choice, int start) {
    int on = Math.floorDiv(start, clock) * clock;
    if (on == start || run.step().serve()) {
      return start;
    }
    for (Tie tie : runs.ties()) {
      Integer most = tie.link().most();
      if (tie.earlier() == run.index() && most != null
          && draft.start[tie.later()] - on - run.minutes() > most) {
        return start;
      }
    }
    return latest(run, choice, on) == on ? on : start;
  }

  /** The latest start, not after this one, at which everything the run needs is free; or NONE. */
  private int latest(Run run, @Nullable BakeChoice choice, int notAfter) {
    int start = notAfter;
    int last = Integer.MAX_VALUE;
    blocker = Timeline.NOBODY;
    int door = choice == null ? 0 : choice.oven();
    while (start < last) {
      last = start;
      start = attended(run, start);
      start = lower(start, floor.crew.latestStart(start, run, run.minutes(), door), floor.crew.blocker());
      start = onPlaces(run, start);
      start = withVessels(run, start);
      if (choice != null && start >= floor.from) {
        start = inOven(run, choice, start);
      }
      if (start < floor.from) {
        return Timeline.NONE;
      }
    }
    return start;
  }

  private int lower(int start, int found, int whose) {
    if (found < start) {
      blocker = whose;
    }
    return Math.min(start, found);
  }

  private int attended(Run run, int notAfter) {
    int start = notAfter;
    if (run.dish().food()) {
      start = lower(start, floor.crew.there().latestMoment(start), Timeline.HOURS);
      boolean moves = run.footing().cooks() || run.footing().onAMachine();
      if (moves && start != Timeline.NONE) {
        int end = floor.crew.there().latestMoment(start + run.minutes());
        start = end == Timeline.NONE ? end : lower(start, end - run.minutes(), Timeline.HOURS);
      }
    }
    if (run.footing().cooks() && !run.step().unattended()) {
      start = lower(start, floor.crew.there().latestCovered(start, run.minutes()), Timeline.HOURS);
    }
    return start;
  }

  private int onPlaces(Run run, int notAfter) {
    int start = notAfter;
    int minutes = run.minutes();
    if (start >= floor.from && run.footing().onTheWorktop() && !run.pieces().isEmpty()) {
      start = lower(start, floor.landing.latestStart(start, minutes, run.pieces().size()),
          floor.landing.blocker());
    }
    for (int appliance : appliances.get(run.index())) {
      CountTimeline machine = floor.appliances[appliance];
      start = start < floor.from ? start
          : lower(start, machine.latestStart(start, minutes, 1), machine.blocker());
    }
    if (start >= floor.from && run.footing().onABurner()) {
      start = onBurners(run, start);
    }
    if (start >= floor.from && run.footing().onAShelf()) {
      start = onShelves(run, start);
    }
    return start;
  }

  private int onBurners(Run run, int notAfter) {
    int[] fitting = burnersFor.get(run.index());
    int pots = Math.max(1, run.pieces().size());
    if (fitting.length < pots) {
      return Timeline.NONE;
    }
    int[] latest = new int[fitting.length];
    int whose = Timeline.NOBODY;
    for (int i = 0; i < fitting.length; i++) {
      latest[i] = floor.burners[fitting[i]].latestStart(notAfter, run.minutes(), 1);
      whose = latest[i] < notAfter ? floor.burners[fitting[i]].blocker() : whose;
    }
    Arrays.sort(latest);
    return lower(notAfter, latest[latest.length - pots], whose);
  }

  private int onShelves(Run run, int notAfter) {
    int latest = Timeline.NONE;
    int whose = Timeline.HOURS;
    for (int store : storesFor.get(run.index())) {
      Tiers tiers = floor.stores[store];
      int start = tiers.latestStart(
          notAfter, run.minutes(), run.pieces(), order(store, run.requires()), run.requires(), floor.from);
      if (start > latest) {
        latest = start;
        whose = tiers.blocker();
      }
    }
    return lower(notAfter, latest, whose);
  }

  /** Raw food looks for a shelf from the bottom up, the rest from the top down. */
  List<Integer> order(int store, long requires) {
    return requires > 0 ? tiersOf.get(store).reversed() : tiersOf.get(store);
  }

  private int withVessels(Run run, int notAfter) {
    int start = notAfter;
    for (int i = 0; i < fills.get(run.index()).size() && start >= floor.from; i++) {
      Fill fill = fills.get(run.index()).get(i);
      VesselPool pool = pool(fill);
      int number = fillNumbers.get(run.index())[i];
      start = lower(start, pool.latestStart(start, run.minutes(), number, fill.count()), Timeline.HOURS);
    }
    return start;
  }

  private int inOven(Run run, BakeChoice choice, int notAfter) {
    int start = lower(
        notAfter, floor.dials[choice.oven()].latestStart(notAfter, choice.bake()),
        floor.dials[choice.oven()].blocker());
    if (start < floor.from) {
      return start;
    }
    Tiers racks = floor.racks[choice.oven()];
    int found = racks.latestStart(start, run.minutes(), run.pieces(), choice.racks(), 0, floor.from);
    return lower(start, found, racks.blocker());
  }

  /** Hands first, so that no wash is put where the run itself needs them. */
  private boolean takePeopleAndVessels(Run run, @Nullable BakeChoice choice, int start) {
    int[] cooks = floor.crew.marks();
    List<Fill> all = fills.get(run.index());
    List<VesselPool.State> states = all.stream().map(fill -> pool(fill).state()).toList();
    boolean room = takeHands(run, choice, start);
    for (int i = 0; i < all.size() && room; i++) {
      room = takeVessels(run, i, start, start + run.minutes());
    }
    if (!room) {
      for (int i = 0; i < all.size(); i++) {
        pool(all.get(i)).back(states.get(i));
      }
      floor.crew.rollback(cooks);
    }
    return room;
  }

  private boolean takeVessels(Run run, int number, int start, int end) {
    Fill fill = fills.get(run.index()).get(number);
    int last = Math.max(end, lastEnd(fill));
    return pool(fill).take(fillNumbers.get(run.index())[number], fill.count(), start, last);
  }

  private VesselPool pool(Fill fill) {
    return Objects.requireNonNull(floor.vessels[fill.vessel()]);
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

  private boolean takeHands(Run run, @Nullable BakeChoice choice, int start) {
    Crew.Taken[] taken = new Crew.Taken[run.hands().size()];
    int door = choice == null ? 0 : choice.oven();
    for (int i = 0; i < taken.length; i++) {
      Crew.Taken hands = floor.crew.take(start, run, run.hands().get(i), run.minutes(), door);
      if (hands == null) {
        return false;
      }
      taken[i] = hands;
    }
    draft.hands[run.index()] = taken;
    return true;
  }

  private void takePlaces(Run run, @Nullable BakeChoice choice, int start) {
    int i = run.index();
    int end = start + run.minutes();
    draft.start[i] = start;
    draft.end[i] = end;
    draft.choice[i] = choice;
    if (run.footing().onTheWorktop() && !run.pieces().isEmpty()) {
      floor.landing.take(start, end, run.pieces().size(), i);
    }
    for (int appliance : appliances.get(i)) {
      floor.appliances[appliance].take(start, end, 1, i);
    }
    if (run.footing().onABurner()) {
      takeBurners(run, start, end);
    }
    if (run.footing().onAShelf()) {
      takeShelves(run, start, end);
    }
    if (choice != null) {
      floor.dials[choice.oven()].take(start, choice.bake(), i);
      Tiers racks = floor.racks[choice.oven()];
      int[] found = Objects.requireNonNull(racks.room(start, end, run.pieces(), choice.racks(), 0));
      racks.take(start, end, run.pieces(), found, 0, i);
      draft.racks[i] = found;
    }
  }

  private void takeBurners(Run run, int start, int end) {
    int[] taken = new int[Math.max(1, run.pieces().size())];
    int next = 0;
    for (int burner : burnersFor.get(run.index())) {
      if (next < taken.length && floor.burners[burner].fits(start, end, 1)) {
        floor.burners[burner].take(start, end, 1, run.index());
        taken[next++] = burner;
      }
    }
    draft.burners[run.index()] = taken;
  }

  /** Rather a shelf on which the food may stay when the step is over. */
  private void takeShelves(Run run, int start, int end) {
    int leaves = leaves(run, end);
    for (int to : new int[]{leaves, end}) {
      for (int store : storesFor.get(run.index())) {
        List<Integer> tiers = order(store, run.requires());
        int[] found = floor.stores[store].room(start, to, run.pieces(), tiers, run.requires());
        if (found != null) {
          found = found.length == 0 ? new int[]{tiers.getFirst()} : found;
          floor.stores[store].take(start, end, run.pieces(), found, run.requires(), run.index());
          draft.store[run.index()] = store;
          draft.shelves[run.index()] = found;
          return;
        }
      }
    }
  }

  private int leaves(Run run, int end) {
    int leaves = end;
    for (Wait wait : runs.waits()) {
      if (wait.run() == run.index()) {
        for (Wait.Taker taker : wait.takers()) {
          leaves = Math.max(leaves, taker.run() == Wait.TABLE ? taker.due() : draft.start[taker.run()]);
        }
      }
    }
    return leaves;
  }

  /** Lets a run that waits by itself begin sooner, as far as it may, where its place is free. */
  void beginSooner(Run run, int from) {
    int i = run.index();
    int was = draft.start[i];
    int start = Math.max(from, draft.end[i] - run.most());
    boolean sooner = start < was && start >= floor.from && floor.crew.there().openAt(start);
    if (sooner && hasPlaceFrom(run, start, was) && hasVesselsFrom(run, start)) {
      takePlaceFrom(run, start, was);
      draft.start[i] = start;
    }
  }

  private boolean hasPlaceFrom(Run run, int start, int was) {
    int[] shelves = draft.shelves[run.index()];
    if (!run.footing().onAShelf()) {
      return floor.landing.fits(start, was, run.pieces().size());
    }
    return shelves != null
        && floor.stores[draft.store[run.index()]].hasRoom(start, was, run.pieces(), shelves, run.requires());
  }

  private boolean hasVesselsFrom(Run run, int start) {
    List<Fill> all = fills.get(run.index());
    List<VesselPool.State> states = all.stream().map(fill -> pool(fill).state()).toList();
    int[] cooks = floor.crew.marks();
    boolean room = true;
    for (int i = 0; i < all.size() && room; i++) {
      room = takeVessels(run, i, start, draft.end[run.index()]);
    }
    if (!room) {
      for (int i = 0; i < all.size(); i++) {
        pool(all.get(i)).back(states.get(i));
      }
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
