package ovenloom.solver.place;

import ovenloom.model.menu.Step;

/**
 * What sort of places a run takes, worked out once, since it is asked at every schedule.
 *
 * @param cooks in an oven or on a burner
 * @param bakes in an oven
 * @param onABurner on a burner
 * @param onAMachine at an appliance
 * @param onAShelf in a cold or hot place
 */
public record Footing(boolean cooks, boolean bakes, boolean onABurner, boolean onAMachine, boolean onAShelf) {

  static Footing of(Step step) {
    boolean bakes = step.bake() != null;
    boolean burner = step.burner() != null;
    return new Footing(bakes || burner, bakes, burner, !step.appliances().isEmpty(), step.shelf() != null);
  }

  /** Whether its vessels stand on the worktop. */
  boolean onTheWorktop() {
    return !cooks && !onAMachine && !onAShelf;
  }
}
