package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * A run in an oven, with what stays in there after it.
 *
 * @param name as a cook would call it
 * @param steps what it does; never empty
 * @param stays of its food, anywhere
 */
record Bakes(String name, Placement run, Need.Bake bake, Baking baking, List<BatchStep> steps,
    List<Stay> stays) {

  /** A stretch of a stay in the oven. */
  record Left(Stay stay, Where.InOven where, Stretch when) {}

  /** All that the menu knows as bakes and the plan puts in an oven, the kitchen's or not. */
  static List<Bakes> of(Case plan) {
    List<Bakes> all = new ArrayList<>();
    for (Placement run : plan.plan().placements()) {
      List<BatchStep> steps = plan.steps(run);
      Need.Bake bake = steps.isEmpty() ? null : steps.getFirst().step().bake();
      Baking baking = run.baking();
      if (bake != null && baking != null) {
        all.add(new Bakes(plan.name(run), run, bake, baking, steps, stays(plan, run)));
      }
    }
    return all;
  }

  private static List<Stay> stays(Case plan, Placement run) {
    return plan.plan()
        .stays()
        .stream()
        .filter(stay -> stay.dish().equals(run.dish()) && stay.step().equals(run.step()))
        .filter(stay -> run.batches().holds(stay.batches()))
        .toList();
  }

  String oven() {
    return baking.oven();
  }

  Dish dish() {
    return steps.getFirst().dish();
  }

  /** What waits in this oven afterwards, part by part. */
  List<Left> left() {
    List<Left> left = new ArrayList<>();
    for (Stay stay : stays) {
      for (Stay.Part part : stay.parts()) {
        if (part.where() instanceof Where.InOven in && in.oven().equals(oven())) {
          left.add(new Left(stay, in, part.when()));
        }
      }
    }
    return left;
  }

  /** Whether all its food waits in the oven, so that nothing is unloaded as it ends. */
  boolean allIsLeft() {
    List<Left> left = left();
    return steps.stream()
        .allMatch(step -> left.stream().anyMatch(each -> each.stay().batches().holds(step.batches())));
  }

  /** From its load until the last of these batches is out of the oven. */
  Stretch inside(Batches batches) {
    int out = left().stream()
        .filter(left -> left.stay().batches().holds(batches) || batches.holds(left.stay().batches()))
        .mapToInt(left -> left.when().to())
        .reduce(run.when().to(), Math::max);
    return new Stretch(run.when().from(), out);
  }

  Stretch inside() {
    return inside(run.batches());
  }
}
