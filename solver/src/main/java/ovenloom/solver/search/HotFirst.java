package ovenloom.solver.search;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import ovenloom.model.life.Warmness;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.solver.place.Decisions;
import ovenloom.solver.place.Decoder;
import ovenloom.solver.place.Runs;

/**
 * Lets all that is to come to the table hot or warm choose before the rest of the work, dish by dish from the heat on, those first that soon lose
 * by waiting, where few minutes decide by lot; and has it go straight on from the heat to whatever is done to it last, so that it waits where it stays hot.
 */
final class HotFirst {

  /** Food that loses nothing for so many minutes may wait as long as it likes. */
  private static final int LONG = 120;

  /** By so much of these minutes the order differs from one time to the next. */
  private static final double PLAY = 3;

  private final Event event;
  private final FromTheHeat hot;
  private final List<BatchStep> steps;
  private final Decoder decoder;
  private final Warmness warmness;

  HotFirst(Runs runs, FromTheHeat hot, Decoder decoder) {
    event = runs.event();
    this.hot = hot;
    this.decoder = decoder;
    steps = runs.work().steps();
    warmness = new Warmness(runs.work());
  }

  /** Others' decisions, but for what is hot. */
  Decisions of(Decisions others, Random lot) {
    Decisions next = others.copy();
    Map<Dish, Double> mayWait = new LinkedHashMap<>();
    hot.dishes().forEach(dish -> mayWait.put(dish, free(dish) + lot.nextDouble() * PLAY));
    List<Integer> first = mayWait.entrySet()
        .stream()
        .sorted(
            Comparator.comparingInt((Map.Entry<Dish, Double> each) -> -event.due(each.getKey(), 1))
                .thenComparingDouble(Map.Entry::getValue))
        .flatMap(each -> hot.of(each.getKey()).stream())
        .toList();
    Set<Integer> all = new LinkedHashSet<>(first);
    IntStream.range(0, others.steps()).map(others::step).forEach(all::add);
    int turn = 0;
    for (int step : all) {
      next.setStep(turn++, step);
    }
    first.forEach(step -> goStraightOn(step, next));
    return next;
  }

  /** Minutes from the heat for which the dish loses nothing. */
  private int free(Dish dish) {
    int heat = hot.of(dish).getFirst();
    int minutes = 0;
    while (minutes < LONG && warmness.tenthsShort(heat, minutes) == 0) {
      minutes++;
    }
    return minutes;
  }

  private void goStraightOn(int step, Decisions decisions) {
    if (!hot.followers(steps.get(step)).isEmpty()) {
      decisions.setStay(step, decoder.takenAtOnce(step));
    }
  }
}
