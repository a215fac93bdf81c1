package ovenloom.model.heat;

import ovenloom.model.measure.Temperature;

/**
 * What a food is made of, in shares of its mass that add up to one.
 *
 * @param water share of its mass, and so on
 */
public record Composition(
    double water, double protein, double fat, double carbohydrate, double fibre, double ash) {

  private static final double ROUNDING = 0.005;

  /** Refuses shares that are negative, or that do not add up. */
  public Composition {
    double all = water + protein + fat + carbohydrate + fibre + ash;
    double least = Math.min(Math.min(Math.min(water, protein), Math.min(fat, carbohydrate)),
        Math.min(fibre, ash));
    if (least < 0 || Math.abs(all - 1) > ROUNDING) {
      throw new IllegalArgumentException("the shares add up to " + all + ", and the least is " + least);
    }
  }

  /**
   * What heat meets in it: conductivities added by volume, densities in reverse, heat capacities by mass.
   *
   * <p>Source: ASHRAE Handbook Refrigeration 2006, chapter 9, the parallel model. Above freezing: ice is left out.
   */
  public Material at(Temperature temperature) {
    double celsius = temperature.inCelsius();
    double volume = 0;
    double conductivity = 0;
    double heatCapacity = 0;
    for (Component component : Component.values()) {
      Material pure = component.at(celsius);
      double share = share(component);
      volume += share / pure.density();
      conductivity += share / pure.density() * pure.conductivity();
      heatCapacity += share * pure.heatCapacity();
    }
    return new Material(conductivity / volume, 1 / volume, heatCapacity);
  }

  private double share(Component component) {
    return switch (component) {
      case WATER -> water;
      case PROTEIN -> protein;
      case FAT -> fat;
      case CARBOHYDRATE -> carbohydrate;
      case FIBRE -> fibre;
      case ASH -> ash;
    };
  }
}
