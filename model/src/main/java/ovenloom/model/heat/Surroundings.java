package ovenloom.model.heat;

import ovenloom.model.measure.Temperature;

/**
 * What is around food for a while.
 *
 * @param air its temperature, or the water's
 * @param coefficient heat transfer, by air and by radiation, W/(m2 K)
 * @param wetness how much of the vapour that a wet surface would give off does get away: 0 for what is covered, dry or in water
 */
public record Surroundings(Temperature air, double coefficient, double wetness) {

  public Surroundings {
    if (!(coefficient > 0 && wetness >= 0 && wetness <= 1)) {
      throw new IllegalArgumentException("coefficient " + coefficient + ", wetness " + wetness);
    }
  }
}
