package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.Placement;

/**
 * Vessels of one kind that a plan keeps for some food.
 *
 * @param who whose food it is, as a cook would call the run that puts it in
 * @param when from then until nothing of it is in them
 */
record Filled(String vessel, int count, String who, Stretch when) {

  /** @param which of the vessels the run's step names */
  private record Shared(Placement run, int which) {}

  /** All that the plan fills; batches put into one vessel in one run fill it once. */
  static List<Filled> of(Case plan) {
    List<Filled> all = new ArrayList<>();
    Map<Shared, Filled> shared = new LinkedHashMap<>();
    for (Filling filling : plan.work().fillings()) {
      BatchStep first = plan.work().steps().get(filling.first());
      Placement run = plan.run(first);
      if (run != null && first.step().together().oneVessel()) {
        int which = plan.work().fillingsOf(first.index()).indexOf(filling);
        shared.merge(new Shared(run, which), of(plan, filling, run), Filled::togetherWith);
      } else if (run != null) {
        all.add(of(plan, filling, run));
      }
    }
    all.addAll(shared.values());
    return all;
  }

  private static Filled of(Case plan, Filling filling, Placement run) {
    int from = run.when().from();
    int to = Math.max(from, filling.toTheTable() ? endOfService(plan, filling) : lastUse(plan, filling, run));
    return new Filled(filling.vessel(), filling.count(), plan.name(run), new Stretch(from, to));
  }

  private static int endOfService(Case plan, Filling filling) {
    return plan.event().endOfService(plan.work().steps().get(filling.steps().getLast()).dish());
  }

  private static int lastUse(Case plan, Filling filling, Placement run) {
    return Stream.concat(filling.steps().stream(), filling.movers().stream())
        .map(plan::run)
        .mapToInt(each -> each == null ? run.when().to() : each.when().to())
        .reduce(run.when().to(), Math::max);
  }

  private Filled togetherWith(Filled other) {
    Stretch both = new Stretch(Math.min(when.from(), other.when.from()),
        Math.max(when.to(), other.when.to()));
    return new Filled(vessel, Math.max(count, other.count), who, both);
  }
}
