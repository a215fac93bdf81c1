package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.cli.sheet.Journey.Leg;
import ovenloom.model.menu.BatchStep;

/** What happens to food after a run: it is taken out, it waits, it is carried on, it goes to the table. */
final class FoodActs {

  private final Book book;
  private final Words words;
  private final GoesInHot hot;
  private final Leaving leaving;

  FoodActs(Book book, Words words, GoesInHot hot) {
    this.book = book;
    this.words = words;
    this.hot = hot;
    this.leaving = new Leaving(book, words);
  }

  /** Of each step by itself; batches that do the same are told together later. */
  List<DishAct> after(BatchStep step) {
    Journey journey = Journey.of(book, step);
    List<DishAct> acts = new ArrayList<>();
    for (int leg = 1; leg < journey.legs().size(); leg++) {
      acts.addAll(moved(journey, journey.legs().get(leg - 1), journey.legs().get(leg)));
    }
    if (book.work().goesToTheTable(step.index()) && !step.step().serve()) {
      acts.addAll(toTheTable(journey));
    } else if (isLeftWhereItWas(journey)) {
      acts.addAll(leaving.alone(journey, journey.legs().getLast(), journey.end(), Turn.OUT));
    }
    return acts;
  }

  private List<DishAct> moved(Journey journey, Leg from, Leg to) {
    String until = " " + new Until(book, journey).of(to, to.when().from());
    if (from.spot().equals(to.spot())) {
      return stays(journey, to, until);
    }
    int now = to.when().from();
    boolean isSplit = book.fedBy(journey.step())
        .stream()
        .anyMatch(taker -> book.run(taker).when().from() == now);
    if (isSplit) {
      String left = new Leftover(book, journey, now).sentence(Words.small(into(to.spot())) + until);
      return one(journey, now, Turn.WAIT, left + hot.sentence(List.of(journey.step()), now),
          Places.at(from.spot()).and(Places.at(to.spot())));
    }
    if (from.spot() instanceof Spot.OnShelves(String store, List<String> shelves)
        && to.spot() instanceof Spot.OnShelves(String same, List<String> others) && same.equals(store)) {
      String over = "In the " + store + ", from " + words.shelvesAlone(store, shelves) + " to "
          + words.shelvesAlone(store, others);
      return List.of(new DishAct(now, Turn.ACROSS, List.of(), journey.step(), journey.step().batches(),
          over + "," + until + ".", Places.between(from.spot(), to.spot())));
    }
    return leaving.then(journey, from, now, turn(from.spot(), to.spot()), to.spot(),
        into(to.spot()) + until + "." + hot.sentence(List.of(journey.step()), now));
  }

  private static Turn turn(Spot from, Spot to) {
    if (to instanceof Spot.Bench) {
      return Turn.OUT;
    }
    return from instanceof Spot.Bench ? Turn.IN : Turn.ACROSS;
  }

  /** Food that goes on standing on the worktop or a shelf is told where it began to. */
  private List<DishAct> stays(Journey journey, Leg leg, String until) {
    return switch (leg.spot()) {
      case Spot.InOven(String oven, List<Integer> racks) -> {
        String how = leg.hold() == null ? ", switched off," : " at " + leg.hold().written();
        yield one(journey, leg.when().from(), Turn.BY_ITSELF,
            "Leave in " + words.oven(oven) + how + until + ".", Places.at(leg.spot()));
      }
      case Spot.OnBurners(List<String> burners) ->
        one(journey, leg.when().from(), Turn.WAIT, "Turn the burner low. Keep warm on it" + until + ".",
            Places.NONE);
      case Spot.Bench() -> List.of();
      case Spot.OnShelves(String store, List<String> shelves) -> List.of();
      case Spot.InMachine(String machine) -> List.of();
    };
  }

  private String into(Spot spot) {
    return switch (spot) {
      case Spot.Bench() -> "Onto the counter";
      case Spot.OnShelves(String store, List<String> shelves) ->
        "Into " + words.ontoShelves(store, shelves) + ",";
      case Spot.InOven(String oven, List<Integer> racks) -> "Into " + words.oven(oven);
      case Spot.OnBurners(List<String> burners) -> "Onto " + words.burners(burners);
      case Spot.InMachine(String machine) -> "Into the " + machine;
    };
  }

  private List<DishAct> toTheTable(Journey journey) {
    int due = book.event().due(journey.step().dish(), journey.step().batches().first());
    return leaving.then(journey, journey.legs().getLast(), due, Turn.SERVE, new Spot.Bench(), "");
  }

  /** Something on the heat that no later step takes off it the moment it is done, such as food that joins alongside. */
  private boolean isLeftWhereItWas(Journey journey) {
    boolean waits = journey.legs().size() > 1;
    return !waits && book.fedBy(journey.step())
        .stream()
        .noneMatch(next -> book.run(next).when().from() == journey.end());
  }

  private static List<DishAct> one(Journey journey, int at, Turn turn, String words, Places places) {
    return List.of(
        new DishAct(at, turn, List.of(), journey.step(), journey.step().batches(), words, places));
  }
}
