package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.cli.sheet.Journey.Leg;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.Placement;

/**
 * Food of one step that is in one place just before a minute.
 *
 * @param steps it is of, batch by batch
 * @param done the minute the step that is being done there ends; absent where the food only waits
 * @param until the minute it leaves the place
 */
record Standing(List<BatchStep> steps, Spot spot, @Nullable Integer done, int until) {

  /** All there is, batches that are together told together. */
  static List<Standing> all(Book book, int at) {
    List<Standing> all = new ArrayList<>();
    for (BatchStep step : book.work().steps()) {
      Standing next = step.dish().food() ? of(Journey.of(book, step), at) : null;
      if (next != null) {
        add(all, next);
      }
    }
    return all;
  }

  private static @Nullable Standing of(Journey journey, int at) {
    List<Leg> legs = journey.legs();
    for (int leg = 0; leg < legs.size(); leg++) {
      if (isDuring(legs.get(leg), at)) {
        Spot spot = legs.get(leg).spot();
        boolean isWork = leg == 0 && at < journey.run().when().to();
        return isWork && isInHand(journey, spot, at) ? null
            : new Standing(List.of(journey.step()), spot, isWork ? journey.run().when().to() : null,
                leaves(legs.subList(leg, legs.size())));
      }
    }
    return null;
  }

  /** What ends with a minute is still there before it. */
  private static boolean isDuring(Leg leg, int at) {
    return leg.when().from() < at && at <= leg.when().to();
  }

  /** On the worktop and under hands: told of the hands. */
  private static boolean isInHand(Journey journey, Spot spot, int at) {
    return spot instanceof Spot.Bench && journey.run()
        .hands()
        .stream()
        .anyMatch(hands -> hands.when().from() < at && at < hands.when().to());
  }

  /** The end of the last of them that are in the place of the first. */
  private static int leaves(List<Leg> legs) {
    int end = legs.getFirst().when().to();
    for (Leg next : legs) {
      if (!next.spot().equals(legs.getFirst().spot())) {
        return end;
      }
      end = next.when().to();
    }
    return end;
  }

  private static void add(List<Standing> all, Standing next) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).isWith(next)) {
        all.set(i, all.get(i).and(next));
        return;
      }
    }
    all.add(next);
  }

  private boolean isWith(Standing other) {
    BatchStep mine = steps.getFirst();
    BatchStep its = other.steps.getFirst();
    return mine.dish().name().equals(its.dish().name()) && mine.step().name().equals(its.step().name())
        && spot.place().equals(other.spot.place()) && Objects.equals(done, other.done)
        && until == other.until;
  }

  private Standing and(Standing other) {
    List<BatchStep> both = new ArrayList<>(steps);
    both.addAll(other.steps);
    return new Standing(both, Spot.and(spot, other.spot), done, until);
  }

  /** {@code Roast potatoes, batches 2 and 3 (2 x baking tray), roast until 18:20.} */
  String words(Book book, Clock clock, int at) {
    BatchStep step = steps.getFirst();
    String work = done == null ? ""
        : ", " + step.step().name() + (done < until ? " until " + clock.time(done, at) + ", there" : "");
    String left = isSomeTaken(book, at) ? "What is left of " : "";
    return left + step.dish().name() + batches() + Words.in(fillings(book)) + work + " until "
        + clock.time(until, at) + ".";
  }

  private boolean isSomeTaken(Book book, int at) {
    return steps.stream()
        .flatMap(step -> book.fedBy(step).stream())
        .anyMatch(taker -> book.run(taker).when().from() < at);
  }

  private String batches() {
    BatchStep step = steps.getFirst();
    List<Integer> numbers = steps.stream().map(each -> each.batches().first()).sorted().toList();
    boolean isAll = step.step().once() || numbers.size() == step.dish().batches();
    return isAll ? "" : ", " + Words.batches(numbers);
  }

  private List<Filling> fillings(Book book) {
    List<Placement> runs = new ArrayList<>();
    return steps.stream()
        .filter(step -> !step.step().together().oneVessel() || isNew(book.run(step), runs))
        .flatMap(step -> book.work().fillingsOf(step.index()).stream())
        .distinct()
        .toList();
  }

  private static boolean isNew(Placement run, List<Placement> runs) {
    return !runs.contains(run) && runs.add(run);
  }
}
