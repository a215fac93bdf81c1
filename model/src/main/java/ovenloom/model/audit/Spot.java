package ovenloom.model.audit;

import java.util.List;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.ShelfPlace;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * Where food is, as far as a hand must move it.
 *
 * @param in an oven, a store, a burner, an appliance, the counter, the table
 * @param at its racks, shelves or burners, one for each vessel; none where it has no parts
 */
record Spot(String in, List<?> at) {

  static final Spot TABLE = new Spot("the table", List.of());
  private static final Spot COUNTER = new Spot("the counter", List.of());
  private static final String BURNERS = "the burner";

  /** Where a step has a batch's food. */
  static Spot of(Case plan, Placement run, BatchStep step) {
    Baking baking = run.baking();
    if (baking != null) {
      return new Spot(baking.oven(), Share.of(plan, run, step, baking.racks()));
    }
    if (!run.burners().isEmpty()) {
      return new Spot(BURNERS, Share.of(plan, run, step, run.burners()));
    }
    if (!run.shelves().isEmpty()) {
      List<ShelfPlace> shelves = Share.of(plan, run, step, run.shelves());
      return new Spot(run.shelves().getFirst().store(), shelves.stream().map(ShelfPlace::shelf).toList());
    }
    List<String> appliances = step.step().appliances().stream().map(Need.OnAppliance::appliance).toList();
    return appliances.isEmpty() ? COUNTER : new Spot("an appliance", appliances);
  }

  /** Where a part of a stay has it. */
  static Spot of(Case plan, Placement run, BatchStep step, Stay.Part part) {
    return switch (part.where()) {
      case Where.Counter() -> COUNTER;
      case Where.OnShelf shelf -> new Spot(shelf.store(), shelf.shelves());
      case Where.OnBurner burner -> new Spot(BURNERS, burner.burners());
      case Where.InOven oven -> {
        Baking baking = run.baking();
        yield new Spot(oven.oven(), baking == null ? List.of() : Share.of(plan, run, step, baking.racks()));
      }
    };
  }

  /** Whether food that goes from here to there stays where it is; it may leave some of it, or be joined by more. */
  boolean isWhere(Spot other) {
    return in.equals(other.in) && (at.containsAll(other.at) || other.at.containsAll(at));
  }

  @Override
  public String toString() {
    return in;
  }
}
