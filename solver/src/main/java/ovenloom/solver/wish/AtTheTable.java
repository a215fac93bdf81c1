package ovenloom.solver.wish;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Runs;
import ovenloom.solver.place.WaitPart;

/** Hot dishes come to the table soon after they leave the heat. */
final class AtTheTable {

  /** Minutes that cost nothing. */
  private static final int STILL_HOT = 10;

  /** What one batch of a hot dish cooks on, and the steps that follow inside the dish. */
  private record HotBatch(Dish dish, int batch, List<Integer> cooking) {}

  private final Runs runs;
  private final List<HotBatch> batches = new ArrayList<>();
  private final int[] next;
  private final Map<Integer, List<Integer>> waitsOf = new HashMap<>();

  AtTheTable(Runs runs) {
    this.runs = runs;
    next = runs.work().steps().stream().mapToInt(this::next).toArray();
    for (Dish dish : runs.event().dishes()) {
      for (int batch = 1; dish.food() && dish.arrives() == Arrives.HOT && batch <= dish.batches(); batch++) {
        batches.add(new HotBatch(dish, batch, cooking(dish, batch)));
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

  /** The step that takes a step's food on, inside the dish; below 0 for none. */
  private int next(BatchStep unit) {
    for (BatchLink link : runs.work().outOf(unit.index())) {
      if (link.makesAStay() && runs.work().steps().get(link.to()).dish().equals(unit.dish())) {
        return link.to();
      }
    }
    return -1;
  }

  private List<Integer> cooking(Dish dish, int batch) {
    return runs.work()
        .steps()
        .stream()
        .filter(unit -> unit.dish().equals(dish) && unit.step().cooks() && unit.batches().holds(batch))
        .map(BatchStep::index)
        .toList();
  }

  /** By dish, what it loses on its way, for all its portions; dishes that lose nothing are left out. */
  Map<String, Long> of(Draft draft) {
    Map<String, Long> lost = new TreeMap<>();
    for (HotBatch batch : batches) {
      long minutes = Math.max(0, minutes(draft, batch) - STILL_HOT);
      if (minutes > 0) {
        lost.merge(batch.dish().name(), minutes * batch.dish().portionsInABatch(), Long::sum);
      }
    }
    return lost;
  }

  private long minutes(Draft draft, HotBatch batch) {
    int unit = -1;
    for (int each : batch.cooking()) {
      if (unit < 0 || end(draft, each) > end(draft, unit)) {
        unit = each;
      }
    }
    if (unit < 0) {
      return 0;
    }
    long minutes = -end(draft, unit);
    int step = unit;
    @Nullable
    Integer served = null;
    while (step >= 0 && served == null) {
      int following = next[step];
      minutes -= keptHot(draft, step, following);
      if (following >= 0 && runs.work().steps().get(following).step().serve()) {
        served = draft.start(runs.runOf().get(following));
      } else if (following >= 0) {
        minutes -= runs.work().steps().get(following).minutes();
      }
      step = following;
    }
    return minutes + (served == null ? runs.event().due(batch.dish(), batch.batch()) : served);
  }

  private int end(Draft draft, int unit) {
    return draft.end(runs.runOf().get(unit));
  }

  private long keptHot(Draft draft, int unit, int following) {
    int taken = following < 0 ? Integer.MAX_VALUE : draft.start(runs.runOf().get(following));
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
      case BURNER -> true;
      case STORE -> runs.event().kitchen().stores().get(part.place()).kind() == Store.Kind.HOT;
    };
  }
}
