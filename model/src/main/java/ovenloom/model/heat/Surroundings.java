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

  /**
   * The same under a lid: on the half of the surface that is above, heat has to get through what is between food and lid too.
   *
   * @param layer what that lets through, W/(m2 K)
   */
  public Surroundings under(double layer) {
    double above = 1 / (1 / coefficient + 1 / layer);
    return new Surroundings(air, (coefficient + above) / 2, 0);
  }

  /** The same for food whose vapour does not get away. */
  public Surroundings dry() {
    return wetness == 0 ? this : new Surroundings(air, coefficient, 0);
  }

  /** What it takes from a surface so warm, C, for each kelvin that this is warmer, with its vapour, W/(m2 K). */
  double takes(double surface) {
    double celsius = air.inCelsius();
    return wetness == 0 || surface <= celsius ? coefficient
        : coefficient * (1 + wetness * Vapour.heat(surface, celsius) / (surface - celsius));
  }

  /** The most that it takes from any surface between two temperatures, C, for each kelvin; W/(m2 K). */
  public double takesAtMost(double from, double to) {
    double most = coefficient;
    for (double surface = Math.max(to, air.inCelsius() + 1); surface <= from; surface++) {
      most = Math.max(most, takes(surface));
    }
    return most;
  }
}
