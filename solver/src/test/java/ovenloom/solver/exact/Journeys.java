package ovenloom.solver.exact;

import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.safety.Perishable;

/** The journeys of all food of which it counts how warm it comes to the heat. */
final class Journeys {

  private final Steps steps;
  private final Waits waits;
  private final Map<Integer, Journey> all = new TreeMap<>();

  Journeys(Steps steps, Waits waits, Bending bending) {
    this.steps = steps;
    this.waits = waits;
    for (BatchStep step : steps.all()) {
      boolean bends = step.step().bake() != null && !bending.isAlwaysRested(step);
      if (step.step().cooks() && (bends || !Perishable.isNever(step.dish().tags()))) {
        all.put(step.index(), journey(step));
      }
    }
  }

  /** That to a step on the heat, or null where it does not count. */
  @Nullable
  Journey to(BatchStep step) {
    return all.get(step.index());
  }

  private Journey journey(BatchStep to) {
    if (to.dish().batches() > 1 || to.dish().matter().thick() == null) {
      throw new UnsupportedOperationException("batches, or food as thick as its vessel, of " + to);
    }
    if (steps.work().into(to.index()).isEmpty()) {
      LinearExpr none = LinearExpr.constant(0);
      return new Journey(List.of(), null, null, to, new Grid(0, 0, 0), none, none, none);
    }
    BatchStep last = feeder(to);
    BatchStep chilled = last.step().shelf() == null ? null : last;
    BatchStep from = chilled == null ? last : feeder(chilled);
    List<BatchStep> known = known(from);
    return chilled == null ? waited(known, to) : chilled(known, chilled, to);
  }

  private Journey waited(List<BatchStep> known, BatchStep to) {
    Wait wait = wait(known.getLast());
    if (wait.stores().size() > 1) {
      throw new UnsupportedOperationException("two cold places for " + known.getLast());
    }
    Store fridge = wait.stores().keySet().stream().map(this::store).findFirst().orElse(null);
    boolean isHot = known.getLast().step().cooks();
    int counter = onTheCounter(known.getLast());
    Grid grid = new Grid(isHot ? counter : 0, fridge == null ? 0 : inTheCold(known.getLast(), fridge),
        fridge == null ? 0 : counter);
    LinearArgument before = Cp.minus(wait.aside(), wait.from());
    return new Journey(known, null, fridge, to, grid, before, Cp.minus(wait.back(), wait.aside()),
        Cp.minus(wait.to(), wait.back()));
  }

  private Journey chilled(List<BatchStep> known, BatchStep chilled, BatchStep to) {
    Wait before = wait(known.getLast());
    Wait after = wait(chilled);
    Need.OnShelf shelf = Objects.requireNonNull(chilled.step().shelf());
    if (!before.stores().isEmpty() || !after.stores().isEmpty() || shelf.stores().size() > 1) {
      throw new UnsupportedOperationException("a cold place before or after the cold step " + chilled);
    }
    boolean isHot = known.getLast().step().cooks();
    Grid grid = new Grid(isHot ? onTheCounter(known.getLast()) : 0, chilled.mostMinutes(),
        onTheCounter(chilled));
    int i = chilled.index();
    return new Journey(known, chilled, null, to, grid, Cp.minus(before.to(), before.from()),
        Cp.minus(steps.end(i), steps.start(i)), Cp.minus(after.to(), after.from()));
  }

  /** All steps up to one, if it is known how warm it leaves its food: as a burner does, or else as the room. */
  private List<BatchStep> known(BatchStep last) {
    List<BatchStep> known = new ArrayList<>(List.of(last));
    while (!steps.work().into(known.getFirst().index()).isEmpty()) {
      known.addFirst(feeder(known.getFirst()));
    }
    boolean isBoiled = last.step().burner() != null;
    for (BatchStep step : isBoiled ? List.<BatchStep>of() : known) {
      boolean isCold = step.step().shelf() != null || step.step().starts() != null
          || (!step.equals(last) && !wait(step).stores().isEmpty());
      if (isCold || step.step().cooks()) {
        throw new UnsupportedOperationException("food of which nobody knows how warm it is, of " + step);
      }
    }
    return known;
  }

  private BatchStep feeder(BatchStep step) {
    List<BatchLink> into = steps.work().into(step.index());
    BatchStep before = into.size() == 1 ? steps.all().get(into.getFirst().from()) : null;
    if (before == null || !before.dish().equals(step.dish())
        || steps.work().outOf(before.index()).size() > 1 || !into.getFirst().makesAStay()) {
      throw new UnsupportedOperationException("more or less than one way to " + step);
    }
    return before;
  }

  private Wait wait(BatchStep step) {
    Wait wait = Objects.requireNonNull(waits.of(step.index()));
    if (!wait.hot().isEmpty()) {
      throw new UnsupportedOperationException("food that is kept hot on its way to the heat, of " + step);
    }
    return wait;
  }

  private Store store(String name) {
    return Objects.requireNonNull(steps.event().kitchen().store(name));
  }

  private static int inTheCold(BatchStep step, Store fridge) {
    return Objects.requireNonNull(step.step().keeps()).stores().getOrDefault(fridge.name(), 0);
  }

  /** Minutes at most between a step and the next. */
  private int onTheCounter(BatchStep step) {
    Integer most = steps.work().outOf(step.index()).getFirst().link().most();
    Keeps keeps = step.step().keeps();
    Integer counter = most != null ? most : keeps == null ? null : keeps.counter();
    return Keeps.FREE_ON_THE_COUNTER + (counter == null ? 0 : counter);
  }
}
