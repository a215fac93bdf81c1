package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ovenloom.cli.sheet.Journey.Leg;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.Placement;

/** The food that is taken in one armful, and where it is just before. */
record Fetching(Book book, Words words, Armful armful) {

  /**
   * Some of it, that leaves its place for this and not for another run that begins at the same minute.
   *
   * @param from whose food it is: one step's, perhaps of several batches
   * @param isThere whether it is where it is wanted
   */
  record Food(List<BatchStep> from, Leg leg, boolean isAShare, boolean isThere) {

    private Food and(Food other) {
      List<BatchStep> both = new ArrayList<>(from);
      both.addAll(other.from);
      return new Food(both, leg.and(other.leg), isAShare || other.isAShare, isThere);
    }

    private Object place() {
      return Arrays.asList(step(), leg.spot().place(), leg.out(), isThere);
    }

    private Object step() {
      return List.of(from.getFirst().dish().name(), from.getFirst().step().name());
    }
  }

  /** Batches that come from one place are told in one breath. */
  List<Food> all() {
    Map<Object, Food> all = new LinkedHashMap<>();
    for (Placement run : armful.runs()) {
      for (BatchStep step : book.steps(run)) {
        Spot wanted = Journey.own(book, step, run);
        for (BatchStep earlier : book.feeding(step)) {
          Journey journey = Journey.of(book, earlier);
          if (isTheFirstToTake(earlier, run) && isNew(earlier, all)) {
            Leg leg = journey.before(armful.at());
            Food food = new Food(List.of(earlier), leg, journey.hasMoreAfter(armful.at()),
                leg.spot().equals(wanted));
            all.merge(food.place(), food, Food::and);
          }
        }
      }
    }
    return List.copyOf(all.values());
  }

  private static boolean isNew(BatchStep earlier, Map<Object, Food> all) {
    return all.values().stream().noneMatch(food -> food.from().contains(earlier));
  }

  private boolean isTheFirstToTake(BatchStep earlier, Placement run) {
    return book.fedBy(earlier)
        .stream()
        .map(book::run)
        .filter(other -> other.when().from() == armful.at())
        .findFirst()
        .map(first -> first.equals(run))
        .orElse(false);
  }

  /** Where the batches of one step come from several places, each says which it is of. */
  boolean isOneOfSeveral(Food food, List<Food> all) {
    return all.stream().filter(other -> other.step().equals(food.step())).count() > 1;
  }

  /** {@code  batches 1 and 2}. */
  String batches(Food food) {
    return Words.batches(food.from().stream().map(each -> each.batches().first()).sorted().toList());
  }

  /** {@code Out of the fridge, top shelf.} Where several things come together it says which. */
  String sentence(Food food, List<Food> all, String leaving) {
    boolean isSome = isOneOfSeveral(food, all);
    String place = food.isThere() && !(food.leg().spot() instanceof Spot.Bench) ? "In place already"
        : leaving.isEmpty() ? "From the counter" : leaving.substring(0, leaving.length() - 1);
    if (!isSome && (food.isThere() || leaving.isEmpty())) {
      return "";
    }
    String some = food.isAShare() ? "A share " + Words.small(place) : place;
    String which = isSome ? ": " + batches(food) : hasSeveral() ? ": " + name(food.from().getFirst()) : "";
    return some + which + ".";
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
    return fillings.isEmpty() ? step : Words.vessels(fillings) + " (" + step + ")";
  }

  /**
   * {@code  With what Leg of lamb left in it.} {@code  With Leeks.} For food of other dishes; else nothing.
   */
  String with() {
    Set<String> others = new LinkedHashSet<>();
    for (BatchStep earlier : feeders()) {
      if (!isOwn(earlier)) {
        String dish = earlier.dish().name();
        others.add(isInItsVessel(earlier) ? "what " + dish + " left in it" : dish);
      }
    }
    return others.isEmpty() ? "" : " With " + Words.and(List.copyOf(others)) + ".";
  }

  private boolean isInItsVessel(BatchStep earlier) {
    return armful.fillings().stream().anyMatch(filling -> filling.steps().contains(earlier.index()));
  }

  private boolean isOwn(BatchStep earlier) {
    return earlier.dish().name().equals(armful.run().dish());
  }

  /** One of each step, however many batches feed it. */
  private List<BatchStep> feeders() {
    Set<String> names = new LinkedHashSet<>();
    return book.feeding(armful.step())
        .stream()
        .filter(each -> names.add(each.dish().name() + "/" + each.step().name()))
        .toList();
  }
}
