package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.menu.Keeps;

/** The sorts of places that food may be told to wait in, wait by wait, whether there is room or not. */
final class Spots {

  /** An oven that is left at its holding mark, and one that is switched off. */
  static final int AT_HOLD = 0;
  static final int OFF = 1;

  private final Runs runs;
  private final List<int[]> cold = new ArrayList<>();
  private final List<int[]> hot = new ArrayList<>();
  private final List<List<Spot>> spots = new ArrayList<>();
  private final int[] steps;
  private final int[] ways;

  /** A sort of place; a store's number in the kitchen's list, for a store; {@link #OFF} or not, for an oven. */
  record Spot(WaitPart.Kind kind, int place) {}

  Spots(Runs runs) {
    this.runs = runs;
    for (Wait wait : runs.waits()) {
      cold.add(stores(wait.keeps(), true));
      hot.add(stores(wait.keeps(), false));
      spots.add(spots(wait));
    }
    steps = runs.waits().stream().mapToInt(this::step).toArray();
    ways = new int[steps.length];
    for (int number = 0; number < ways.length; number++) {
      ways[number] = spots.get(number).size() + (isTakenOn(runs.waits().get(number)) ? 1 : 0);
    }
  }

  /** The numbers of the stores in which food of these keeps, longest first. */
  private int[] stores(Keeps keeps, boolean cold) {
    Kitchen kitchen = runs.event().kitchen();
    return keeps.stores()
        .entrySet()
        .stream()
        .sorted(Comparator.comparingInt((Map.Entry<String, Integer> each) -> -each.getValue()))
        .map(each -> kitchen.store(each.getKey()))
        .filter(store -> store != null && store.kind().isCold() == cold)
        .mapToInt(store -> kitchen.stores().indexOf(store))
        .toArray();
  }

  private List<Spot> spots(Wait wait) {
    List<Spot> all = new ArrayList<>(List.of(new Spot(WaitPart.Kind.COUNTER, 0)));
    addStores(all, cold.getLast());
    addStores(all, hot.getLast());
    if (wait.keeps().burner() != null && runs.runs().get(wait.run()).footing().onABurner()) {
      all.add(new Spot(WaitPart.Kind.BURNER, 0));
    }
    if (staysInItsOven(wait)) {
      all.add(new Spot(WaitPart.Kind.OVEN, AT_HOLD));
      all.add(new Spot(WaitPart.Kind.OVEN, OFF));
    }
    return all;
  }

  private static void addStores(List<Spot> all, int[] stores) {
    for (int store : stores) {
      all.add(new Spot(WaitPart.Kind.STORE, store));
    }
  }

  private int step(Wait wait) {
    return runs.runs()
        .get(wait.run())
        .units()
        .stream()
        .filter(unit -> unit.batches().first() == wait.batches().first())
        .findFirst()
        .orElseThrow()
        .index();
  }

  private static boolean isTakenOn(Wait wait) {
    return wait.takers().stream().anyMatch(taker -> taker.run() != Wait.TABLE);
  }

  /** Whether it may be left in the oven it was baked in. */
  boolean staysInItsOven(Wait wait) {
    Run run = runs.runs().get(wait.run());
    return wait.keeps().oven() != null && run.unloading() != null;
  }

  /** The cold stores in which the food of a wait keeps, where it keeps longest first. */
  int[] cold(int number) {
    return cold.get(number);
  }

  /** The hot places, likewise. */
  int[] hot(int number) {
    return hot.get(number);
  }

  /** The step whose decision it is. */
  int step(int number) {
    return steps[number];
  }

  /** How many ways to choose from, if it is the step's: a sort of place each, and one more where a step takes the food on. */
  int ways(int number, int step) {
    return steps[number] == step ? ways[number] : 0;
  }

  /** The last of the ways, in which food does not wait; OPEN where only the table takes it. */
  int takenAtOnce(int number) {
    int places = spots.get(number).size();
    return ways[number] > places ? places : Decisions.OPEN;
  }

  /** Whether it was decided that food is not to wait, and who takes it is to be done right after. */
  boolean isTakenAtOnce(int number, Decisions decisions) {
    int way = decisions.stay(steps[number]);
    return way >= 0 && way % ways[number] == takenAtOnce(number);
  }

  /** The sort of place that is meant by a way; null where that is open, or there is to be no wait. */
  @Nullable
  Spot decided(int number, int way) {
    List<Spot> all = spots.get(number);
    int place = way < 0 ? all.size() : way % ways[number];
    return place == all.size() ? null : all.get(place);
  }
}
