package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ovenloom.model.life.Warmness;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Work;

/** What is done to hot and warm dishes from their last heat on: how soon it is before the table decides how warm they come to it. */
final class FromTheHeat {

  private final Work work;
  private final Map<Dish, List<Integer>> steps = new LinkedHashMap<>();

  FromTheHeat(Work work) {
    this.work = work;
    for (BatchStep step : work.steps()) {
      if (Warmness.isWarm(step.dish()) && !isHeatedLater(step) && isHot(step)) {
        steps.computeIfAbsent(step.dish(), none -> new ArrayList<>()).add(step.index());
      }
    }
  }

  private boolean isHeatedLater(BatchStep step) {
    return followers(step).stream().anyMatch(later -> later.step().cooks() || isHeatedLater(later));
  }

  private boolean isHot(BatchStep step) {
    return step.step().cooks() || work.into(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> work.steps().get(link.from()))
        .anyMatch(before -> before.dish().equals(step.dish()) && isHot(before));
  }

  /** The steps of its dish that take its food on, but for serving. */
  List<BatchStep> followers(BatchStep step) {
    return work.outOf(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .map(link -> work.steps().get(link.to()))
        .filter(later -> later.dish().equals(step.dish()) && !later.step().serve())
        .toList();
  }

  /** Those with a step on an oven or burner. */
  List<Dish> dishes() {
    return List.copyOf(steps.keySet());
  }

  /** The indices of a dish's steps from its last heat on, in the order of the work; none for one that is not among them. */
  List<Integer> of(Dish dish) {
    return steps.getOrDefault(dish, List.of());
  }
}
