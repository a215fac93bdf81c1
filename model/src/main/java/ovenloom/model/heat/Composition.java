package ovenloom.model.heat;

import java.util.List;
import java.util.Map;
import ovenloom.model.measure.Temperature;

/**
 * What a food is made of, in shares of its mass that add up to one.
 *
 * @param water share of its mass, and so on
 */
public record Composition(
    double water, double protein, double fat, double carbohydrate, double fibre, double ash) {

  private static final double ROUNDING = 0.005;

  /** Water that protein holds and that never freezes, in shares of the protein. ASHRAE, as below. */
  private static final double BOUND = 0.4;

  /** Of water, J/kg. A value of physics; row T27 of the facts. */
  private static final double MELTING = 334_000;

  /** At which the properties of frozen food are taken, C: half way between a freezer and melting. */
  private static final double FROZEN = -10;

  /** What is told of food: ice is water. */
  public static final List<Component> SAID = List.of(Component.WATER, Component.PROTEIN, Component.FAT,
      Component.CARBOHYDRATE, Component.FIBRE, Component.ASH);

  /** Of these; what is not among them it has none of. */
  public static Composition of(Map<Component, Double> shares) {
    double[] all = SAID.stream().mapToDouble(each -> shares.getOrDefault(each, 0.0)).toArray();
    return new Composition(all[0], all[1], all[2], all[3], all[4], all[5]);
  }

  /** Whether shares that add up to so much are all of it, rounded as food tables round. */
  public static boolean isWhole(double all) {
    return Math.abs(all - 1) <= ROUNDING;
  }

  /** Refuses shares that are negative, or that do not add up. */
  public Composition {
    double all = water + protein + fat + carbohydrate + fibre + ash;
    double least = Math.min(Math.min(Math.min(water, protein), Math.min(fat, carbohydrate)),
        Math.min(fibre, ash));
    if (least < 0 || !isWhole(all)) {
      throw new IllegalArgumentException("the shares add up to " + all + ", and the least is " + least);
    }
  }

  /**
   * What heat meets in it: conductivities added by volume, densities in reverse, heat capacities by mass.
   *
   * <p>Source: ASHRAE Handbook Refrigeration 2006, chapter 9, the parallel model. Frozen, all water that is not bound is ice.
   */
  public Material at(Temperature temperature) {
    Material thawed = mixed(temperature.inCelsius(), 0);
    double freezes = water - BOUND * protein;
    if (freezes <= 0) {
      return thawed;
    }
    Material frozen = mixed(FROZEN, freezes);
    return new Material(thawed.conductivity(), thawed.density(), thawed.heatCapacity(),
        new Ice(frozen.conductivity(), frozen.heatCapacity(), freezes * MELTING));
  }

  private Material mixed(double celsius, double ice) {
    double volume = 0;
    double conductivity = 0;
    double heatCapacity = 0;
    for (Component component : Component.values()) {
      Material pure = component.at(celsius);
      double share = share(component, ice);
      volume += share / pure.density();
      conductivity += share / pure.density() * pure.conductivity();
      heatCapacity += share * pure.heatCapacity();
    }
    return new Material(conductivity / volume, 1 / volume, heatCapacity);
  }

  /** Of its mass, thawed. */
  public double share(Component component) {
    return share(component, 0);
  }

  private double share(Component component, double ice) {
    return switch (component) {
      case WATER -> water - ice;
      case ICE -> ice;
      case PROTEIN -> protein;
      case FAT -> fat;
      case CARBOHYDRATE -> carbohydrate;
      case FIBRE -> fibre;
      case ASH -> ash;
    };
  }
}
