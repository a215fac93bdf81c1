package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.cli.sheet.Journey.Leg;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.HandsOn;

/** Taking food from where it was: out of an oven, off a burner, out of a fridge. */
record Leaving(Book book, Words words) {

  private static final Spot HERE = new Spot.Bench();

  /** In a sentence; empty for the worktop, since food there is at hand. */
  String sentence(Spot spot) {
    String from = from(spot);
    return from.isEmpty() ? "" : from + ".";
  }

  private String from(Spot spot) {
    return switch (spot) {
      case Spot.Bench() -> "";
      case Spot.InOven(String oven, List<Integer> racks) -> "Out of " + words.oven(oven);
      case Spot.OnBurners(List<String> burners) -> burners.size() == 1 ? "Off the burner" : "Off the burners";
      case Spot.OnShelves(String store, List<String> shelves) -> "Out of " + words.shelves(store, shelves);
      case Spot.InMachine(String machine) -> "Out of the " + machine;
    };
  }

  List<DishAct> alone(Journey journey, Leg leg, int at, Turn turn) {
    return from(leg.spot()).isEmpty() ? List.of() : then(journey, leg, at, turn, HERE, "");
  }

  /** Leaves a place and goes on; an unloading that begins before is told when it does, in a line of its own. */
  List<DishAct> then(Journey journey, Leg leg, int at, Turn turn, Spot to, String next) {
    HandsOn out = leg.out();
    List<DishAct> acts = new ArrayList<>();
    Unloading unloading = unloading(journey.step(), leg);
    if (out != null && unloading != null && unloading.at() < at) {
      boolean isPutDown = turn == Turn.OUT && to.equals(HERE);
      if (isPutDown && !unloading.isLong()) {
        return List.of(act(journey, unloading.at(), turn, out.cooks(), leg.spot(), to, next));
      }
      acts.add(act(journey, unloading.at(), Turn.OUT, out.cooks(), HERE, length(leg, out),
          Places.at(leg.spot())));
      if (!next.isEmpty() || turn == Turn.SERVE) {
        acts.add(act(journey, at, turn, turn == Turn.SERVE ? List.of() : out.cooks(), HERE, to, next));
      }
      return acts;
    }
    List<String> cooks = out == null ? List.of() : out.cooks();
    acts.add(act(journey, at, turn, cooks, leg.spot(), to, next));
    return acts;
  }

  /** Of food that is in an oven. */
  @Nullable
  Unloading unloading(BatchStep step, Leg leg) {
    return leg.out() != null && leg.spot() instanceof Spot.InOven(String oven, List<Integer> racks)
        ? new Unloading(book, step.dish().name(), step.batches().first(), oven, leg.out())
        : null;
  }

  private String length(Leg leg, HandsOn out) {
    int from = out.when().from();
    return from(leg.spot()) + ": " + out.when().minutes() + " min, until "
        + clock().time(out.when().to(), from)
        + ".";
  }

  private DishAct act(Journey journey, int at, Turn turn, List<String> cooks, Spot from,
      Spot to, String words) {
    Places moved = Places.between(from, to);
    return act(journey, at, turn, cooks, from, words,
        turn == Turn.SERVE ? moved.and(Places.onto(Place.TABLE)) : moved);
  }

  private DishAct act(Journey journey, int at, Turn turn, List<String> cooks, Spot from, String words,
      Places places) {
    List<Filling> served = turn == Turn.SERVE ? book.work().fillingsOf(journey.step().index()) : List.of();
    return new DishAct(at, turn, cooks, journey.step(), journey.step().batches(), from, words, served,
        places);
  }

  private Clock clock() {
    return new Clock(book.event().calendar());
  }
}
