package ovenloom.solver.proof;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Warmness;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Work;

/**
 * What hot and warm dishes lose on their way to the table at least. What a hot place, an oven or a burner may keep warm loses nothing;
 * nor does a batch of which more than one step may be the last on the heat. Cool and cold dishes lose nothing here.
 */
final class TableFloor {

  /** So many minutes are told apart at which a dish loses more than the minute before. */
  private static final int MOST_LOSSES = 50;

  private final Relaxation relaxation;
  private final Work work;
  private final Event event;
  private final Warmness warmness;
  private final LinearExprBuilder lost = LinearExpr.newBuilder();

  private TableFloor(Relaxation relaxation) {
    this.relaxation = relaxation;
    work = relaxation.work();
    event = work.event();
    warmness = new Warmness(work);
  }

  static LinearArgument of(Relaxation relaxation) {
    TableFloor floor = new TableFloor(relaxation);
    for (Dish dish : floor.event.dishes()) {
      for (int batch = 1; Warmness.isWarm(dish) && batch <= dish.batches(); batch++) {
        floor.add(dish, batch);
      }
    }
    return floor.lost.build();
  }

  private void add(Dish dish, int batch) {
    List<BatchStep> own = work.steps()
        .stream()
        .filter(step -> step.dish().equals(dish) && step.batches().holds(batch))
        .toList();
    List<BatchStep> last = own.stream()
        .filter(step -> step.step().cooks())
        .filter(step -> own.stream().noneMatch(other -> other.step().cooks() && leads(step, other)))
        .toList();
    boolean goesToTheTable = work.steps()
        .stream()
        .anyMatch(step -> step.dish().equals(dish) && work.goesToTheTable(step.index()));
    if (last.size() == 1 && goesToTheTable) {
      add(dish, batch, last.getFirst(), own);
    }
  }

  private boolean leads(BatchStep one, BatchStep other) {
    return work.outOf(one.index())
        .stream()
        .filter(link -> link.link().kind() != Link.Kind.ALONGSIDE)
        .anyMatch(link -> link.to() == other.index() || leads(work.steps().get(link.to()), other));
  }

  private void add(Dish dish, int batch, BatchStep last, List<BatchStep> own) {
    List<BatchStep> serving = own.stream().filter(step -> step.step().serve()).toList();
    LinearArgument served = serving.size() == 1 ? relaxation.start(serving.getFirst().index())
        : LinearExpr.constant(event.due(dish, batch));
    LinearExprBuilder minutes = LinearExpr.newBuilder().add(served).addTerm(end(last), -1);
    long most = 0;
    @Nullable
    BatchStep step = last;
    while (step != null) {
      BatchStep next = next(step, own);
      if (mayBeKeptHot(step)) {
        minutes.add(end(step)).addTerm(next == null ? served : relaxation.start(next.index()), -1);
      }
      most += longestGap(step);
      if (next != null) {
        minutes.add(-next.minutes());
        most += relaxation.extents().most(next.index()) - next.minutes();
      }
      step = next;
    }
    add(dish, last, minutes.build(), Math.clamp(most, 0, event.to() - event.from()));
  }

  private void add(Dish dish, BatchStep last, LinearArgument minutes, int most) {
    long[] tenths = neverLess(IntStream.rangeClosed(0, most)
        .mapToLong(each -> warmness.tenthsShort(last.index(), each))
        .toArray());
    lost.add(tenths[0] * dish.portionsInABatch());
    int[] losses = IntStream.rangeClosed(1, most).filter(each -> tenths[each] > tenths[each - 1]).toArray();
    int stride = Math.ceilDiv(losses.length, MOST_LOSSES);
    long soFar = tenths[0];
    for (int i = 0; i < losses.length; i += stride) {
      BoolVar isSoLong = relaxation.model().newBoolVar(losses[i] + " minutes after " + last);
      relaxation.model().addLessThan(minutes, losses[i]).onlyEnforceIf(isSoLong.not());
      lost.addTerm(isSoLong, (tenths[losses[i]] - soFar) * dish.portionsInABatch());
      soFar = tenths[losses[i]];
    }
  }

  /** What it loses at least from each minute on. */
  private static long[] neverLess(long[] tenths) {
    for (int each = tenths.length - 1; each > 0; each--) {
      tenths[each - 1] = Math.min(tenths[each - 1], tenths[each]);
    }
    return tenths;
  }

  private LinearArgument end(BatchStep step) {
    return relaxation.end(step.index());
  }

  private @Nullable BatchStep next(BatchStep step, List<BatchStep> own) {
    for (BatchLink link : work.outOf(step.index())) {
      BatchStep to = work.steps().get(link.to());
      if (link.makesAStay() && own.contains(to)) {
        return to.step().serve() ? null : to;
      }
    }
    return null;
  }

  private long longestGap(BatchStep step) {
    return work.outOf(step.index())
        .stream()
        .map(link -> link.link().most())
        .mapToInt(most -> most == null ? 0 : most)
        .reduce(relaxation.extents().longestWait(step.index()), Math::max);
  }

  private boolean mayBeKeptHot(BatchStep step) {
    Keeps keeps = step.step().keeps();
    return keeps != null && (keeps.oven() != null || keeps.burner() != null || event.kitchen()
        .stores()
        .stream()
        .anyMatch(store -> store.kind() == Store.Kind.HOT && keeps.stores().containsKey(store.name())));
  }
}
