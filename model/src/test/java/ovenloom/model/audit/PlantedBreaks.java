package ovenloom.model.audit;

import java.util.List;

/** What a seed plants, in which of two plans. */
record PlantedBreaks(Planting planting, Twins twins) {

  private static final List<Planting> KINDS = List.of(Planting.values());

  /** Kinds take turns; all else is up to the seed. */
  static PlantedBreaks of(long seed) {
    Chance chance = new Chance(seed);
    Planting planting = kind(seed);
    return new PlantedBreaks(planting, twins(planting, Evening.of(chance), chance));
  }

  static Planting kind(long seed) {
    return KINDS.get((int) (seed % KINDS.size()));
  }

  private static Twins twins(Planting planting, Evening evening, Chance chance) {
    return switch (planting) {
      case LEFT_OUT_FIVE_MINUTES_TOO_LONG -> PlantedMinutes.leftOut(evening, chance);
      case COOKED_ONE_DEGREE_SHORT -> PlantedDegrees.undercooked(evening, chance);
      case HEATED_AGAIN_ONE_DEGREE_SHORT -> PlantedDegrees.notHotAgain(evening, chance);
      case HEATED_AGAIN_TOO_SLOWLY -> PlantedMinutes.heatedTooSlowly(evening, chance);
      case COOLED_IN_TOO_DEEP_A_PAN -> PlantedPlaces.tooDeep(evening, chance);
      case COOLED_IN_TOO_WARM_A_FRIDGE -> PlantedPlaces.tooWarmToCool(evening, chance);
      case KEPT_ONE_DEGREE_TOO_WARM -> PlantedDegrees.tooWarmAFridge(evening, chance);
      case KEPT_HOT_ONE_DEGREE_TOO_COOL -> PlantedDegrees.tooCoolAHotPlace(evening, chance);
      case KEPT_A_DAY_TOO_LONG -> PlantedMinutes.aDayTooLong(evening, chance);
      case RAW_ONE_SHELF_TOO_HIGH -> PlantedPlaces.rawAbove(evening, chance);
      case BAKED_FIVE_MINUTES_TOO_SHORT -> PlantedMinutes.bakedTooShort(evening, chance);
    };
  }
}
