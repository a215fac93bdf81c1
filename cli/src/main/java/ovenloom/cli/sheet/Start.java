package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.cli.sheet.Journey.Leg;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;

/** The first minute of a run: its food is fetched, and the work begins. */
final class Start {

  /** Minutes; what waits less where it was made is at hand anyway. */
  private static final int WORTH_TELLING = 5;

  private final Book book;
  private final Words words;
  private final Placement run;
  private final BatchStep step;
  private final Fetching fetching;
  private final Spot spot;
  private final Set<String> fetched = new LinkedHashSet<>();
  private final List<DishAct> acts = new ArrayList<>();
  private boolean isOffTheHeat;

  Start(Book book, Words words, Placement run) {
    this.book = book;
    this.words = words;
    this.run = run;
    this.step = book.steps(run).getFirst();
    this.fetching = new Fetching(book, words, run);
    this.spot = Journey.spot(step, run);
  }

  List<DishAct> acts() {
    List<String> cooks = new ArrayList<>(cooks());
    List<Fetching.Food> foods = fetching.all();
    fetching.joined(foods)
        .filter(food -> !food.leg().spot().equals(spot))
        .forEach(food -> fetch(food, cooks));
    boolean isThereAlready = !foods.isEmpty()
        && foods.stream().allMatch(food -> food.leg().spot().equals(spot));
    fetched.add(new Arrival(book, words, run, isThereAlready).sentences() + fetching.uses() + waits());
    acts.add(new DishAct(
        run.when().from(), turn(), cooks, step, run.batches(), String.join(" ", fetched).strip()));
    return acts;
  }

  /** In the same line, unless somebody else takes it out, or takes a while to. */
  private void fetch(Fetching.Food food, List<String> cooks) {
    Leaving leaving = new Leaving(book, words);
    HandsOn out = food.leg().out();
    boolean byOthers = out != null && !cooks.isEmpty() && !out.cooks().equals(cooks);
    if (out != null && (byOthers || out.when().minutes() > 1)) {
      acts.addAll(leaving.alone(Journey.of(book, food.from()), food.leg(), run.when().from(), Turn.OUT));
      return;
    }
    if (out != null) {
      cooks.clear();
      cooks.addAll(out.cooks());
    }
    isOffTheHeat |= food.leg().spot() instanceof Spot.InOven || food.leg().spot() instanceof Spot.OnBurners;
    fetched.add(fetching.sentence(food, leaving.sentence(food.leg().spot())));
  }

  private List<String> cooks() {
    return run.hands()
        .stream()
        .filter(hands -> hands.when().from() == run.when().from() && hands.act() != HandsOn.Act.UNLOAD)
        .flatMap(hands -> hands.cooks().stream())
        .distinct()
        .toList();
  }

  private Turn turn() {
    if (spot instanceof Spot.InOven) {
      return Turn.IN;
    }
    if (isOffTheHeat) {
      return Turn.OUT;
    }
    return spot instanceof Spot.Bench ? cooks().isEmpty() ? Turn.WAIT : Turn.WORK : Turn.IN;
  }

  /** Food that goes on standing where it is once the run is over. */
  private String waits() {
    Journey journey = Journey.of(book, step);
    if (journey.legs().size() < 2 || !journey.legs().get(1).spot().equals(spot)) {
      return "";
    }
    Leg leg = journey.legs().get(1);
    String until = new Until(book, journey).of(leg, run.when().from());
    return switch (spot) {
      case Spot.Bench() -> leg.when().minutes() < WORTH_TELLING ? "" : " On the counter " + until + ".";
      case Spot.OnShelves(String store, List<String> shelves) -> " Stays there " + until + ".";
      case Spot.InOven(String oven, List<Integer> racks) -> "";
      case Spot.OnBurners(List<String> burners) -> "";
      case Spot.InMachine(String machine) -> "";
    };
  }
}
