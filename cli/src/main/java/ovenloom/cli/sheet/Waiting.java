package ovenloom.cli.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Journey.Leg;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Placement;

/** Food that goes on standing where it is once its run is over, which is told where the run begins. */
record Waiting(Book book, List<Placement> runs) {

  /** Minutes; what waits less where it was made is at hand anyway. */
  private static final int WORTH_TELLING = 5;

  boolean isLike(Waiting other) {
    return Set.copyOf(untils().values()).equals(Set.copyOf(other.untils().values()));
  }

  /** A sentence that follows: {@code  Stays there until 18:30.} */
  String after(Spot spot) {
    return switch (spot) {
      case Spot.Bench() -> onTheCounter();
      case Spot.OnShelves(String store, List<String> shelves) -> there();
      case Spot.InOven(String oven, List<Integer> racks) -> "";
      case Spot.OnBurners(List<String> burners) -> "";
      case Spot.InMachine(String machine) -> "";
    };
  }

  /** {@code until 18:30}, for all of what rests by itself on the worktop and goes on doing so; else null. */
  @Nullable
  String untilTaken() {
    boolean isByItself = step().step().hands().isEmpty();
    Map<Integer, String> untils = untils();
    Set<String> different = Set.copyOf(untils.values());
    return isByItself && untils.size() == batches() && different.size() == 1 ? different.iterator().next()
        : null;
  }

  private String onTheCounter() {
    boolean isWorthTelling = minutes() >= WORTH_TELLING && untilTaken() == null;
    return isWorthTelling ? " On the counter " + untils().values().iterator().next() + "." : "";
  }

  /** Batches that were put in together may be taken one by one, and some of them before the others. */
  private String there() {
    Map<Integer, String> untils = untils();
    Map<String, Set<Integer>> batches = new LinkedHashMap<>();
    untils.forEach((batch, until) -> batches.computeIfAbsent(until, none -> new TreeSet<>()).add(batch));
    if (batches.isEmpty()) {
      return "";
    }
    if (batches.size() == 1 && untils.size() == batches()) {
      return " Stays there " + batches.keySet().iterator().next() + ".";
    }
    return " Stays there: " + batches.entrySet()
        .stream()
        .map(each -> Words.batches(each.getValue()) + " " + each.getKey())
        .collect(Collectors.joining("; ")) + ".";
  }

  /** By the first batch of what waits. */
  private Map<Integer, String> untils() {
    Map<Integer, String> untils = new LinkedHashMap<>();
    for (Placement run : runs) {
      for (BatchStep each : book.steps(run)) {
        Journey journey = Journey.of(book, each);
        if (isStill(journey)) {
          untils.put(each.batches().first(),
              new Until(book, journey).of(journey.legs().get(1), run.when().from()));
        }
      }
    }
    return untils;
  }

  private static boolean isStill(Journey journey) {
    return journey.legs().size() > 1
        && journey.legs().get(1).spot().equals(journey.legs().getFirst().spot());
  }

  private int minutes() {
    return runs.stream()
        .flatMap(run -> book.steps(run).stream())
        .map(each -> Journey.of(book, each))
        .filter(Waiting::isStill)
        .map(journey -> journey.legs().get(1))
        .map(Leg::when)
        .mapToInt(Stretch::minutes)
        .max()
        .orElse(0);
  }

  private int batches() {
    return runs.stream().mapToInt(run -> book.steps(run).size()).sum();
  }

  private BatchStep step() {
    return book.steps(runs.getFirst()).getFirst();
  }
}
