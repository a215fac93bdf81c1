package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import ovenloom.cli.sheet.Journey.Leg;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.Placement;

/** The food that a run takes, and where it is just before. */
record Fetching(Book book, Words words, Placement run) {

  /** Some of it, that leaves its place for this run and not for another one that begins at the same minute. */
  record Food(BatchStep from, Leg leg, boolean isAShare) {

    private Food with(Food other) {
      return new Food(from, leg.alsoOn(other.leg()), isAShare || other.isAShare);
    }
  }

  List<Food> all() {
    int now = run.when().from();
    List<Food> all = new ArrayList<>();
    for (BatchStep step : book.steps(run)) {
      for (BatchStep earlier : book.feeding(step)) {
        Journey journey = Journey.of(book, earlier);
        if (isTheFirstToTake(earlier)) {
          all.add(new Food(earlier, journey.before(now), journey.hasMoreAfter(now)));
        }
      }
    }
    return all;
  }

  /** Batches that come off several shelves of one fridge are told in one breath. */
  Stream<Food> joined(List<Food> foods) {
    Map<String, Food> joined = new LinkedHashMap<>();
    for (Food food : foods) {
      String step = food.from().dish().name() + "/" + food.from().step().name();
      if (food.leg().spot() instanceof Spot.OnShelves(String store, List<String> shelves)) {
        joined.merge(step + " in " + store, food, Food::with);
      } else {
        joined.put(step + " of " + food.from().batches() + " at " + food.leg().spot(), food);
      }
    }
    return joined.values().stream();
  }

  private boolean isTheFirstToTake(BatchStep earlier) {
    return book.fedBy(earlier)
        .stream()
        .map(book::run)
        .filter(other -> other.when().from() == run.when().from())
        .findFirst()
        .map(run::equals)
        .orElse(false);
  }

  /** {@code Out of the fridge, top shelf.} Where several things come together it says which. */
  String sentence(Food food, String leaving) {
    if (leaving.isEmpty()) {
      return "";
    }
    String what = leaving.substring(0, leaving.length() - 1);
    String some = food.isAShare() ? "A share " + Words.small(what) : what;
    return some + (hasSeveral() ? ": " + name(food.from()) : "") + ".";
  }

  private boolean hasSeveral() {
    return feeders().size() > 1;
  }

  /** A vessel is what one looks for on a shelf. */
  private String name(BatchStep from) {
    if (!isOwn(from)) {
      return from.dish().name();
    }
    List<Filling> fillings = book.work().fillingsOf(from.index());
    String step = from.step().name();
    return fillings.isEmpty() ? step : words.vessels(fillings) + " (" + step + ")";
  }

  /** {@code  Uses Leg of lamb (roast).} for food of other dishes; else nothing. */
  String uses() {
    Set<String> others = new LinkedHashSet<>();
    for (BatchStep earlier : feeders()) {
      if (!isOwn(earlier)) {
        others.add(earlier.dish().name() + " (" + earlier.step().name() + ")");
      }
    }
    return others.isEmpty() ? "" : " Uses " + Words.and(List.copyOf(others)) + ".";
  }

  private boolean isOwn(BatchStep earlier) {
    return earlier.dish().name().equals(run.dish());
  }

  /** One of each step, however many batches feed it. */
  private List<BatchStep> feeders() {
    Set<String> names = new LinkedHashSet<>();
    return book.feeding(book.steps(run).getFirst())
        .stream()
        .filter(each -> names.add(each.dish().name() + "/" + each.step().name()))
        .toList();
  }
}
