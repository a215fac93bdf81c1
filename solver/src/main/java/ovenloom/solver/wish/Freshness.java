package ovenloom.solver.wish;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Wish;
import ovenloom.solver.place.Runs;
import ovenloom.solver.place.Wait;
import ovenloom.solver.place.WaitPart;

/** Food is best soon: what waits off a cold shelf for longer than it is best for, and what waits on one. */
final class Freshness implements WishPoints {

  /** One point for ten minutes off the cold shelf is 36 of these, one for six hours on it too. */
  private static final int SHARES_A_POINT = 360;

  private static final int SHARES_A_MINUTE = 36;

  /** The waits of one batch. */
  private record Batch(Dish dish, List<Integer> waits) {}

  private final List<Batch> batches = new ArrayList<>();

  Freshness(Runs runs) {
    for (Dish dish : runs.event().dishes()) {
      for (int batch = 1; batch <= dish.batches(); batch++) {
        batches.add(new Batch(dish, waits(runs, dish, batch)));
      }
    }
  }

  private static List<Integer> waits(Runs runs, Dish dish, int batch) {
    List<Integer> waits = new ArrayList<>();
    for (int i = 0; i < runs.waits().size(); i++) {
      Wait wait = runs.waits().get(i);
      if (runs.runs().get(wait.run()).dish().equals(dish) && wait.batches().first() == batch) {
        waits.add(i);
      }
    }
    return waits;
  }

  @Override
  public Wish wish() {
    return Wish.FRESHNESS;
  }

  @Override
  public long of(Outcome outcome) {
    return batches.stream().mapToLong(batch -> of(outcome, batch)).sum();
  }

  private static long of(Outcome outcome, Batch batch) {
    long off = 0;
    long cold = 0;
    for (int wait : batch.waits()) {
      for (WaitPart part : outcome.draft.parts(wait)) {
        boolean isCold = part.kind() == WaitPart.Kind.STORE && store(outcome, part).kind().isCold();
        cold += isCold ? part.minutes() : 0;
        off += isCold ? 0 : part.minutes();
      }
    }
    return (SHARES_A_MINUTE * Math.max(0, off - batch.dish().isBestFor()) + cold) / SHARES_A_POINT;
  }

  private static Store store(Outcome outcome, WaitPart part) {
    return outcome.draft.runs().event().kitchen().stores().get(part.place());
  }
}
