package ovenloom.solver.supper;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** A plan in a cook's words, so that a test reads like one: {@code 18:20-18:50}, {@code fridge top 17:00-18:00}. */
public final class Telling {

  private static final int DAY = 24 * 60;

  private final Plan plan;

  Telling(Plan plan) {
    this.plan = plan;
  }

  /** When a step runs, batch by batch. */
  public List<String> when(String step) {
    return runs(step).stream().map(run -> told(run.when())).toList();
  }

  /** Who has their hands on a step when, in order. */
  public List<String> hands(String step) {
    return runs(step).stream()
        .flatMap(run -> run.hands().stream())
        .map(hands -> String.join(" and ", hands.cooks()) + " " + told(hands.when()))
        .toList();
  }

  /** On which racks a step bakes, counted from the bottom, from 0. */
  public List<Integer> racks(String step) {
    return runs(step).stream().flatMap(run -> Objects.requireNonNull(run.baking()).racks().stream()).toList();
  }

  /** On which shelves a step's vessels stand. */
  public List<String> shelves(String step) {
    return runs(step).stream()
        .flatMap(run -> run.shelves().stream())
        .map(place -> place.store() + " " + place.shelf())
        .toList();
  }

  public List<String> burners(String step) {
    return runs(step).stream().flatMap(run -> run.burners().stream()).toList();
  }

  /** Where a step's food waits when it is done, part by part. */
  public List<String> waits(String step) {
    return plan.stays()
        .stream()
        .filter(stay -> (stay.dish() + "/" + stay.step()).equals(step))
        .flatMap(stay -> stay.parts().stream())
        .map(Telling::told)
        .toList();
  }

  /** What the ovens do over time. */
  public List<String> ovens() {
    return plan.ovens()
        .stream()
        .flatMap(log -> log.spans().stream())
        .map(span -> span.doing().name().toLowerCase(Locale.ROOT) + " " + span.mark() + " "
            + told(span.when()))
        .toList();
  }

  public List<String> washes() {
    return plan.washes()
        .stream()
        .map(wash -> wash.cook() + " " + wash.count() + " " + wash.vessel() + " " + told(wash.when()))
        .toList();
  }

  private List<Placement> runs(String step) {
    List<Placement> found = plan.placements()
        .stream()
        .filter(run -> (run.dish() + "/" + run.step()).equals(step))
        .toList();
    if (found.isEmpty()) {
      throw new AssertionError("no step \"" + step + "\"");
    }
    return found;
  }

  private static String told(Stay.Part part) {
    return switch (part.where()) {
      case Where.Counter() -> "counter";
      case Where.OnShelf(var store, var shelves) -> store + " " + String.join(" and ", shelves);
      case Where.InOven(var oven, var mark) -> oven;
      case Where.OnBurner(var burners) -> burners.stream().collect(joining(" and "));
    } + " " + told(part.when());
  }

  private static String told(Stretch when) {
    return told(when.from()) + "-" + told(when.to());
  }

  private static String told(int moment) {
    int days = Math.floorDiv(moment, DAY);
    int minutes = Math.floorMod(moment, DAY);
    String clock = "%02d:%02d".formatted(minutes / 60, minutes % 60);
    return days == 0 ? clock : "day %d %s".formatted(days, clock);
  }
}
