package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn;

/** The first minute of a run: its food is fetched, and the work begins. */
final class Start {

  private final Book book;
  private final Words words;
  private final GoesInHot hot;
  private final Armful armful;
  private final BatchStep step;
  private final Fetching fetching;
  private final OutOfTheCold cold;
  private final Spot spot;
  private final List<Fetching.Food> foods;
  private final boolean isThereAlready;
  private final Set<String> sentences = new LinkedHashSet<>();
  private final List<DishAct> acts = new ArrayList<>();
  private Places taken = Places.NONE;
  private boolean isEmptied;

  Start(Book book, Words words, GoesInHot hot, Armful armful) {
    this.book = book;
    this.words = words;
    this.hot = hot;
    this.armful = armful;
    this.step = armful.step();
    this.fetching = new Fetching(book, words, armful);
    this.cold = new OutOfTheCold(book, step);
    this.spot = armful.spot();
    this.foods = fetching.all();
    this.isThereAlready = !foods.isEmpty() && foods.stream().allMatch(Fetching.Food::isThere);
  }

  List<DishAct> acts() {
    List<String> cooks = new ArrayList<>(cooks());
    foods.forEach(food -> fetch(food, cooks));
    sentences.add(cold.sentence());
    String begins = new Arrival(book, words, armful, isThereAlready).sentences();
    String goesIn = isThereAlready ? "" : hot.sentence(armful.steps(), armful.at());
    sentences.add(begins + new Waiting(book, armful.runs()).after(spot)
        + fetching.with() + cover() + goesIn + served());
    sentences.remove("");
    String all = String.join(" ", sentences);
    armful.runs()
        .forEach(run -> acts.add(
            new DishAct(armful.at(), turn(), cooks, step, run.batches(), all, places())));
    return acts;
  }

  private Places places() {
    Places all = taken.and(cold.places()).and(Places.between(new Spot.Bench(), spot));
    return isServed() ? all.and(Places.onto(Place.TABLE)) : all;
  }

  /** In the same line, unless somebody else takes it out, or takes a while to. */
  private void fetch(Fetching.Food food, List<String> cooks) {
    Leaving leaving = new Leaving(book, words);
    HandsOn out = food.isThere() ? null : food.leg().out();
    boolean byOthers = out != null && !cooks.isEmpty() && !out.cooks().equals(cooks);
    Unloading unloading = out == null ? null
        : leaving.unloading(food.from().getFirst(), food.leg());
    boolean isBefore = unloading != null && unloading.at() < armful.at();
    if (byOthers || isBefore) {
      food.from()
          .forEach(from -> acts
              .addAll(leaving.alone(Journey.of(book, from), food.leg(), armful.at(), Turn.OUT)));
      return;
    }
    if (out != null) {
      cooks.clear();
      cooks.addAll(out.cooks());
    }
    if (!food.isThere()) {
      taken = taken.and(Places.between(food.leg().spot(), spot));
    }
    isEmptied |= !food.isThere() && !(food.leg().spot() instanceof Spot.Bench);
    sentences.add(fetching.sentence(food, foods, leaving.sentence(food.leg().spot())));
  }

  /** What its card says of a lid or foil; told of a whole dish where it is made, and where it comes hot. */
  private String cover() {
    Boolean own = step.step().covered();
    if (own != null) {
      return !own ? " Leave it open." : isStirredInIce() ? " Cover it when it comes out." : " Cover it.";
    }
    if (!Boolean.TRUE.equals(step.dish().matter().covered())) {
      return "";
    }
    return step.step().cooks() ? " Cover it when it comes off the heat."
        : book.feeding(step).isEmpty() ? " Keep it covered." : "";
  }

  private boolean isStirredInIce() {
    return book.isInIce(armful.run())
        && step.step().hands().stream().anyMatch(hands -> hands.moment() instanceof Need.Moment.At);
  }

  /** What is plated or carved at the table time goes there as soon as it is. */
  private String served() {
    if (!isServed()) {
      return "";
    }
    return " To the table" + (armful.filled().isEmpty() ? Words.in(armful.fillings()) : "") + ".";
  }

  private boolean isServed() {
    return step.step().serve() && book.work().goesToTheTable(step.index());
  }

  private List<String> cooks() {
    return armful.run()
        .hands()
        .stream()
        .filter(hands -> hands.when().from() == armful.at() && hands.act() != HandsOn.Act.UNLOAD)
        .flatMap(hands -> hands.cooks().stream())
        .distinct()
        .toList();
  }

  private Turn turn() {
    if (isThereAlready && cooks().isEmpty() && armful.filled().isEmpty()) {
      return Turn.BY_ITSELF;
    }
    if (spot instanceof Spot.InOven) {
      return isEmptied ? Turn.INTO_OVEN : Turn.IN;
    }
    if (spot instanceof Spot.Bench) {
      return isEmptied ? Turn.FETCH : cooks().isEmpty() ? Turn.WAIT : Turn.WORK;
    }
    return isEmptied ? Turn.ACROSS : Turn.IN;
  }
}
