package ovenloom.model.life;

import ovenloom.model.heat.Surroundings;
import ovenloom.model.kitchen.Store;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;

/**
 * What a lid, or none, makes of the air around food that is off the heat: under one no vapour gets away, and less heat. Where no card says,
 * food is taken to be open on the counter and at the table; in the cold it is not reckoned with its vapour, for it may be loosely covered.
 *
 * @param unsaid whether all food of which no card says so has a lid on it
 */
record Lids(Substance substance, boolean unsaid) {

  /** Room air. */
  Surroundings onTheCounter(BatchStep step, Temperature room) {
    Surroundings air = new Surroundings(room, Places.ON_THE_COUNTER, 0);
    Boolean covered = substance.covered(step);
    return covered == null ? unsaid ? air.underALid() : open(step, air) : said(step, air, covered);
  }

  /** The air of a cold or hot place, or the water of one. Only in cold air does a lid count: all that is hot and shut in is in its own vapour. */
  Surroundings in(BatchStep step, Store store) {
    Surroundings air = new Surroundings(store.holds(), store.air().coefficient(), 0);
    Boolean covered = substance.covered(step);
    boolean counts = store.kind() == Store.Kind.FRIDGE || store.kind() == Store.Kind.FREEZER;
    return counts && covered != null ? said(step, air, covered) : air;
  }

  private Surroundings said(BatchStep step, Surroundings air, boolean covered) {
    return covered ? air.underALid() : open(step, air);
  }

  private Surroundings open(BatchStep step, Surroundings air) {
    return new Surroundings(air.air(), air.coefficient(), substance.kind(step.dish()).open());
  }
}
