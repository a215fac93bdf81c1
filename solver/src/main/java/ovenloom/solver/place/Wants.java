package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Need;

/** What each run asks of the kitchen, by number: ways to bake, vessels, appliances, burners, stores. */
final class Wants {

  /**
   * Vessels that a run is in.
   *
   * @param number of the filling, in the list of all
   */
  record Filling(int number, Fill fill) {}

  private final Runs runs;
  private final Floor floor;
  private final List<List<List<BakeChoice>>> bakes = new ArrayList<>();
  private final List<List<Filling>> fillings = new ArrayList<>();
  private final List<int[]> appliances = new ArrayList<>();
  private final List<int[]> burners = new ArrayList<>();
  private final List<BurnerSize[]> pots = new ArrayList<>();
  private final List<int[]> largestFirst = new ArrayList<>();
  private final List<int[]> hardestFirst = new ArrayList<>();
  private final List<int[]> stores = new ArrayList<>();
  private final int[] leastMinutes;
  private final boolean[] carried;
  private final List<List<Integer>> downwards = new ArrayList<>();

  Wants(Runs runs, Floor floor) {
    this.runs = runs;
    this.floor = floor;
    BakeChoices choices = new BakeChoices(runs.event(), runs.minutes());
    for (Run run : runs.runs()) {
      bakes.add(choices.of(run));
      fillings.add(fillingsOf(run));
      appliances.add(run.step().appliances().stream().mapToInt(this::appliance).toArray());
      burners.add(burnersOf(run));
      pots.add(potsOf(run));
      largestFirst.add(largestFirst(pots.getLast()));
      hardestFirst.add(hardestFirst(run.hands()));
      Need.OnShelf shelf = run.step().shelf();
      stores.add(shelf == null ? new int[0] : shelf.stores().stream().mapToInt(this::store).toArray());
    }
    leastMinutes = runs.runs().stream().mapToInt(this::least).toArray();
    carried = new boolean[stores.size()];
    for (Run run : runs.runs()) {
      carried[run.index()] = isCarriedOut(run);
    }
    for (Tiers tiers : floor.stores) {
      List<Integer> down = new ArrayList<>();
      for (int tier = 0; tier < tiers.size(); tier++) {
        down.add(tier);
      }
      downwards.add(down);
    }
  }

  /** Ways to bake it, as cold as it is written for. */
  List<BakeChoice> bakes(Run run) {
    return bakes.get(run.index()).getFirst();
  }

  /** Ways to bake it from a start, by its number. */
  List<BakeChoice> bakes(Run run, int start) {
    List<List<BakeChoice>> all = bakes.get(run.index());
    return start < 0 ? all.getFirst() : all.get(start % all.size());
  }

  int starts(Run run) {
    return bakes.get(run.index()).size();
  }

  /** The fewest minutes it may take, however it is baked. */
  int leastMinutes(Run run) {
    return leastMinutes[run.index()];
  }

  private int least(Run run) {
    return waysToBake(run).mapToInt(BakeChoice::minutes).reduce(run.minutes(), Math::min);
  }

  /** The most minutes it may take. */
  int mostMinutes(Run run) {
    return waysToBake(run).mapToInt(BakeChoice::minutes).reduce(run.most(), Math::max);
  }

  Stream<BakeChoice> waysToBake(Run run) {
    return bakes.get(run.index()).stream().flatMap(List::stream);
  }

  List<Filling> fillings(Run run) {
    return fillings.get(run.index());
  }

  int[] appliances(Run run) {
    return appliances.get(run.index());
  }

  /** The burners that will do for its smallest pot, the smallest first. */
  int[] burners(Run run) {
    return burners.get(run.index());
  }

  /** The least burner of each of its pots. */
  BurnerSize[] pots(Run run) {
    return pots.get(run.index());
  }

  /** The numbers of its pots, those first that need the largest burner. */
  int[] largestFirst(Run run) {
    return largestFirst.get(run.index());
  }

  private static int[] largestFirst(BurnerSize[] pots) {
    return IntStream.range(0, pots.length)
        .boxed()
        .sorted((one, other) -> pots[other].compareTo(pots[one]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** The numbers of its hands, those first for whom it is hardest to find somebody. */
  int[] hardestFirst(Request request) {
    boolean bent = request.all().size() != request.run().hands().size();
    return bent ? hardestFirst(request.all()) : hardestFirst.get(request.run().index());
  }

  private static int[] hardestFirst(List<HandsNeed> hands) {
    return IntStream.range(0, hands.size())
        .boxed()
        .sorted(Comparator.comparingInt((Integer i) -> hands.get(i).skill() == null ? 1 : 0)
            .thenComparingInt(i -> -hands.get(i).cooks()))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  int[] stores(Run run) {
    return stores.get(run.index());
  }

  private boolean isCarriedOut(Run run) {
    Need.OnShelf shelf = run.step().shelf();
    boolean leaves = run.units().stream().anyMatch(unit -> runs.work().leavesAStay(unit.index()));
    return shelf != null && leaves && keepsInNone(run, shelf) && runs.ties()
        .stream()
        .filter(tie -> tie.earlier() == run.index() && tie.link().kind() == Link.Kind.FOOD)
        .map(tie -> runs.runs().get(tie.later()).step().shelf())
        .noneMatch(next -> next != null && next.stores().stream().anyMatch(shelf.stores()::contains));
  }

  private static boolean keepsInNone(Run run, Need.OnShelf shelf) {
    Keeps keeps = run.step().keeps();
    return keeps == null || shelf.stores().stream().noneMatch(keeps.stores()::containsKey);
  }

  /** Whether its food is taken out of its cold or hot place as it ends, since it neither keeps there nor goes on there. */
  boolean mustBeTakenOut(Run run) {
    return carried[run.index()];
  }

  /** How food looks for a shelf of a store: raw from the bottom up, the rest from the top down. */
  List<Integer> tiers(Run run, int store) {
    return run.requires() > 0 ? downwards.get(store).reversed() : downwards.get(store);
  }

  private List<Filling> fillingsOf(Run run) {
    List<Filling> found = new ArrayList<>();
    for (int i = 0; i < runs.fillings().size(); i++) {
      Fill fill = runs.fillings().get(i);
      if (fill.users().contains(run.index()) && floor.vessels[fill.vessel()] != null) {
        found.add(new Filling(i, fill));
      }
    }
    return found;
  }

  private int appliance(Need.OnAppliance need) {
    return runs.event().kitchen().appliances().indexOf(runs.event().kitchen().appliance(need.appliance()));
  }

  private int store(String name) {
    return runs.event().kitchen().stores().indexOf(runs.event().kitchen().store(name));
  }

  private int[] burnersOf(Run run) {
    BurnerSize[] least = potsOf(run);
    List<Burner> all = runs.event().kitchen().burners();
    return all.stream()
        .filter(burner -> Arrays.stream(least).anyMatch(size -> burner.size().compareTo(size) >= 0))
        .sorted((one, other) -> one.size().compareTo(other.size()))
        .mapToInt(all::indexOf)
        .toArray();
  }

  private static BurnerSize[] potsOf(Run run) {
    Need.OnBurner need = run.step().burner();
    if (need == null) {
      return new BurnerSize[0];
    }
    BurnerSize asked = need.atLeast();
    return run.pieces().isEmpty() ? new BurnerSize[]{asked}
        : run.pieces()
            .stream()
            .map(piece -> piece.burner().compareTo(asked) > 0 ? piece.burner() : asked)
            .toArray(BurnerSize[]::new);
  }
}
