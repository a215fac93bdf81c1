package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;

/**
 * Who does what takes no minutes and is booked for nobody: food that changes place, a dial, a look. Someone whose hands are free at
 * that minute; of several, who is at nothing else in it, then who has the fewest lines so far.
 */
final class FreeHands {

  private final Plan plan;
  private final Map<String, List<Stretch>> work = new HashMap<>();
  private final Map<String, List<Stretch>> errands = new HashMap<>();
  private final Map<String, Integer> lines = new HashMap<>();
  private Act last = new Act(Integer.MIN_VALUE, Turn.WAIT, List.of(), "", "");

  FreeHands(Plan plan) {
    this.plan = plan;
    Stream<HandsOn> atRuns = plan.placements().stream().map(Placement::hands).flatMap(List::stream);
    Stream<HandsOn> afterStays = plan.stays().stream().map(Stay::hands).flatMap(List::stream);
    Stream.concat(atRuns, afterStays)
        .forEach(hands -> hands.cooks().forEach(cook -> add(work, cook, hands.when())));
    plan.placements()
        .stream()
        .filter(this::isAnErrand)
        .map(Placement::hands)
        .flatMap(List::stream)
        .forEach(hands -> hands.cooks().forEach(cook -> add(errands, cook, hands.when())));
    plan.washes().forEach(wash -> add(work, wash.cook(), wash.when()));
  }

  private boolean isAnErrand(Placement run) {
    Dish dish = plan.event().dish(run.dish());
    Step step = dish == null ? null : dish.step(run.step());
    return step != null && step.away();
  }

  private static void add(Map<String, List<Stretch>> all, String cook, Stretch when) {
    all.computeIfAbsent(cook, each -> new ArrayList<>()).add(when);
  }

  /** The same acts, each with somebody to do it. */
  List<Act> named(List<Act> acts) {
    return acts.stream().map(this::named).toList();
  }

  /** The first minute from one to another at which somebody is there with free hands; none if nobody is. */
  OptionalInt free(int from, int to) {
    return IntStream.rangeClosed(from, to)
        .filter(at -> first(at, cook -> !isInTheMiddle(cook, at) && !isAtABreak(cook, at)) != null)
        .findFirst();
  }

  private Act named(Act act) {
    Act named = act.wantsSomeone() && !isEveryones(act) ? by(act) : act;
    last = named;
    named.cooks().forEach(cook -> lines.merge(cook, 1, Integer::sum));
    return named;
  }

  /** What goes to the table when all sit down is told in one list. */
  private boolean isEveryones(Act act) {
    return act.turn() == Turn.SERVE
        && plan.event().courses().stream().anyMatch(course -> course.at() == act.at());
  }

  private Act by(Act act) {
    int at = act.at();
    if (act.turn() == Turn.DIAL && isAtADoor(at)) {
      return act.by(last.cooks().getFirst(), "");
    }
    Cook free = first(at, cook -> !isInTheMiddle(cook, at) && !isAtABreak(cook, at));
    if (free != null) {
      return act.by(free.name(), "");
    }
    Cook resting = first(at, cook -> !isInTheMiddle(cook, at));
    if (resting != null) {
      return act.by(resting.name(), " Leave your break for it.");
    }
    Cook busy = first(at, cook -> true);
    return busy == null ? act : act.by(busy.name(), " Leave your work for it.");
  }

  /** Who has just taken something out, and begins nothing else, turns the dial too. */
  private boolean isAtADoor(int at) {
    return last.at() == at
        && plan.event()
            .cooks()
            .stream()
            .anyMatch(cook -> last.cooks().indexOf(cook.name()) == 0 && !isAtSomething(cook, at));
  }

  /** Whether somebody is there. */
  boolean isAnyoneThere(int at) {
    return first(at, cook -> true) != null;
  }

  private @Nullable Cook first(int at, Predicate<Cook> may) {
    return plan.event()
        .cooks()
        .stream()
        .filter(cook -> isThere(cook, at))
        .filter(may)
        .min(Comparator.<Cook>comparingInt(cook -> isAtSomething(cook, at) ? 1 : 0)
            .thenComparingInt(cook -> lines.getOrDefault(cook.name(), 0)))
        .orElse(null);
  }

  /** The minute that hours end counts, and so does that of going out. */
  private boolean isThere(Cook cook, int at) {
    return cook.hours().stream().anyMatch(each -> each.from() <= at && at <= each.to())
        && !isWithin(errands.getOrDefault(cook.name(), List.of()), at);
  }

  private boolean isInTheMiddle(Cook cook, int at) {
    return isWithin(work(cook), at);
  }

  private static boolean isWithin(List<Stretch> all, int at) {
    return all.stream().anyMatch(each -> each.from() < at && at < each.to());
  }

  private static boolean isAtABreak(Cook cook, int at) {
    return cook.breaks().stream().anyMatch(each -> each.from() < at && at < each.to());
  }

  private boolean isAtSomething(Cook cook, int at) {
    return Stream.concat(work(cook).stream(), cook.breaks().stream())
        .anyMatch(each -> each.from() <= at && at < each.to());
  }

  private List<Stretch> work(Cook cook) {
    return work.getOrDefault(cook.name(), List.of());
  }
}
