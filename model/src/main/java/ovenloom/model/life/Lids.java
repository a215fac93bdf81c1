package ovenloom.model.life;

import ovenloom.model.heat.Surroundings;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchStep;

/**
 * What a lid, or none, makes of the air around food that is off the heat: under one no vapour gets away, and less heat.
 *
 * @param draught by how much the air takes and gives more heat than is thought likely: 1 for what is likely
 */
record Lids(Substance substance, Kitchen kitchen, double draught, Unsaid unsaid) {

  /** Room air. */
  Surroundings onTheCounter(BatchStep step) {
    Surroundings air = new Surroundings(kitchen.room(), Places.ON_THE_COUNTER * draught, 0);
    return switch (cover(step)) {
      case OPEN -> new Surroundings(air.air(), air.coefficient(), substance.kind(step.dish()).open());
      case LOOSE -> air;
      case LID -> air.under(substance.kind(step.dish()).lid());
    };
  }

  private Unsaid cover(BatchStep step) {
    Boolean covered = substance.covered(step);
    return covered == null ? unsaid : covered ? Unsaid.LID : Unsaid.OPEN;
  }

  /**
   * The air of a cold or hot place, or the water of one. How fast cold air cools an open pan is fitted to what was published, so
   * its vapour is in that; a lid keeps warmth in. In hot places and in ice water a lid changes nothing.
   */
  Surroundings in(BatchStep step, Store store) {
    Surroundings air = new Surroundings(store.holds(), store.air().coefficient() * draught, 0);
    boolean isColdAir = store.kind() == Store.Kind.FRIDGE || store.kind() == Store.Kind.FREEZER;
    boolean isCovered = Boolean.TRUE.equals(substance.covered(step));
    return isColdAir && isCovered ? air.under(substance.kind(step.dish()).lid()) : air;
  }
}
