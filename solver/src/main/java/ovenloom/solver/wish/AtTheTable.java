package ovenloom.solver.wish;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Coolness;
import ovenloom.model.life.MeanWarmth;
import ovenloom.model.life.Warmness;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Runs;
import ovenloom.solver.place.WaitPart;

/** Hot and warm dishes come to the table before they have cooled below what they are to be, cool and cold ones no warmer. */
final class AtTheTable {

  /**
   * One batch of a hot or warm dish.
   *
   * @param ways one for each step of it on an oven or burner, in the order of the work
   * @param serving its steps at the pass
   */
  private record HotBatch(Dish dish, int batch, List<Way> ways, List<Integer> serving) {}

  /**
   * From a step to the pass or the table, inside the dish.
   *
   * @param steps that one and those that take its food on, but for serving
   * @param minutes written for those that take it on
   */
  private record Way(List<Integer> steps, int minutes) {

    int from() {
      return steps.getFirst();
    }
  }

  private final Runs runs;
  private final Warmness warmness;
  private final Coolness coolness;
  private final List<HotBatch> batches = new ArrayList<>();
  private final Map<Integer, List<Integer>> waitsOf = new HashMap<>();

  AtTheTable(Runs runs) {
    this.runs = runs;
    warmness = new Warmness(runs.work());
    Cards cards = runs.minutes().cards();
    coolness = new Coolness(cards, new MeanWarmth(cards));
    for (Dish dish : runs.event().dishes()) {
      for (int batch = 1; Warmness.isWarm(dish) && goesToTheTable(dish) && batch <= dish.batches(); batch++) {
        batches.add(hotBatch(dish, batch));
      }
    }
    for (int wait = 0; wait < runs.waits().size(); wait++) {
      for (BatchStep unit : runs.runs().get(runs.waits().get(wait).run()).units()) {
        if (runs.waits().get(wait).batches().holds(unit.batches())) {
          waitsOf.computeIfAbsent(unit.index(), each -> new ArrayList<>()).add(wait);
        }
      }
    }
  }

  private boolean goesToTheTable(Dish dish) {
    return runs.work()
        .steps()
        .stream()
        .anyMatch(unit -> unit.dish().equals(dish) && runs.work().goesToTheTable(unit.index()));
  }

  private HotBatch hotBatch(Dish dish, int batch) {
    List<BatchStep> own = runs.work().steps().stream().filter(unit -> isOf(dish, batch, unit)).toList();
    return new HotBatch(
        dish,
        batch,
        own.stream().filter(unit -> unit.step().cooks()).map(unit -> way(unit, batch)).toList(),
        own.stream().filter(unit -> unit.step().serve()).map(BatchStep::index).toList());
  }

  private static boolean isOf(Dish dish, int batch, BatchStep unit) {
    return unit.dish().equals(dish) && unit.batches().holds(batch);
  }

  private Way way(BatchStep from, int batch) {
    List<Integer> steps = new ArrayList<>(List.of(from.index()));
    int minutes = 0;
    @Nullable
    BatchStep unit = next(from, batch);
    while (unit != null && !unit.step().serve()) {
      steps.add(unit.index());
      minutes += unit.minutes();
      unit = next(unit, batch);
    }
    return new Way(List.copyOf(steps), minutes);
  }

  /** The step that takes a batch's food on, inside the dish; one that is done once feeds several. */
  private @Nullable BatchStep next(BatchStep unit, int batch) {
    for (BatchLink link : runs.work().outOf(unit.index())) {
      BatchStep to = runs.work().steps().get(link.to());
      if (link.makesAStay() && isOf(unit.dish(), batch, to)) {
        return to;
      }
    }
    return null;
  }

  /** By dish, what it loses on its way, for all its portions; dishes that lose nothing are left out. */
  Map<String, Long> of(Draft draft) {
    Map<String, Long> lost = new TreeMap<>();
    for (HotBatch batch : batches) {
      long tenths = tenthsShort(draft, batch);
      if (tenths > 0) {
        lost.merge(batch.dish().name(), tenths * batch.dish().portionsInABatch(), Long::sum);
      }
    }
    lost.putAll(coolness.of(draft.timetable(), draft.begins()));
    return lost;
  }

  private long tenthsShort(Draft draft, HotBatch batch) {
    @Nullable
    Way last = null;
    for (Way way : batch.ways()) {
      if (last == null || end(draft, way.from()) >= end(draft, last.from())) {
        last = way;
      }
    }
    if (last == null) {
      return 0;
    }
    return warmness.tenthsShort(last.from(), minutes(draft, batch, last));
  }

  private long minutes(Draft draft, HotBatch batch, Way last) {
    int served = served(draft, batch);
    long minutes = (long) served - end(draft, last.from()) - last.minutes();
    for (int i = 0; i < last.steps().size(); i++) {
      boolean isLast = i == last.steps().size() - 1;
      int taken = isLast ? served : start(draft, last.steps().get(i + 1));
      minutes -= keptHot(draft, last.steps().get(i), taken);
    }
    return minutes;
  }

  private int served(Draft draft, HotBatch batch) {
    int first = Integer.MAX_VALUE;
    for (int unit : batch.serving()) {
      first = Math.min(first, start(draft, unit));
    }
    return batch.serving().isEmpty() ? runs.event().due(batch.dish(), batch.batch()) : first;
  }

  private int start(Draft draft, int unit) {
    return draft.start(runs.runOf().get(unit));
  }

  private int end(Draft draft, int unit) {
    return draft.end(runs.runOf().get(unit));
  }

  private long keptHot(Draft draft, int unit, int taken) {
    long minutes = 0;
    for (int wait : waitsOf.getOrDefault(unit, List.of())) {
      for (WaitPart part : draft.parts(wait)) {
        minutes += isHot(part) ? Math.max(0, Math.min(part.to(), taken) - part.from()) : 0;
      }
    }
    return minutes;
  }

  private boolean isHot(WaitPart part) {
    return switch (part.kind()) {
      case COUNTER -> false;
      case BURNER, OVEN -> true;
      case STORE -> runs.event().kitchen().stores().get(part.place()).kind() == Store.Kind.HOT;
    };
  }
}
