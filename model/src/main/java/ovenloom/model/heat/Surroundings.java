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

  /** A layer of still air, W/(m2 K): about 2 cm thick, and what is radiated through it. An engineering estimate. */
  private static final double UNDER_A_LID = 6;

  public Surroundings {
    if (!(coefficient > 0 && wetness >= 0 && wetness <= 1)) {
      throw new IllegalArgumentException("coefficient " + coefficient + ", wetness " + wetness);
    }
  }

  /** The same for food in a vessel with something over it: on the half of its surface that is above, heat has to get through a layer of air too. */
  public Surroundings underALid() {
    double above = 1 / (1 / coefficient + 1 / UNDER_A_LID);
    return new Surroundings(air, (coefficient + above) / 2, 0);
  }

  /** The same in air that takes and gives so much more heat. */
  public Surroundings stirredUp(double more) {
    return new Surroundings(air, coefficient * more, wetness);
  }

  /** The same for food whose vapour does not get away. */
  public Surroundings dry() {
    return wetness == 0 ? this : new Surroundings(air, coefficient, 0);
  }

  /** What it takes from a surface so much warmer, C, for each kelvin of difference, its vapour and all, W/(m2 K). */
  public double takes(double surface) {
    double celsius = air.inCelsius();
    return coefficient * (1 + wetness * Vapour.heat(surface, celsius) / (surface - celsius));
  }
}
