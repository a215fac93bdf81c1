package ovenloom.model.heat;

import org.jspecify.annotations.Nullable;

/**
 * What heat has to get through.
 *
 * @param conductivity W/(m K)
 * @param density kg/m3
 * @param heatCapacity J/(kg K)
 * @param ice the same food below freezing; absent for what has no water that freezes
 */
public record Material(double conductivity, double density, double heatCapacity, @Nullable Ice ice) {

  /** What does not freeze. */
  public Material(double conductivity, double density, double heatCapacity) {
    this(conductivity, density, heatCapacity, null);
  }

  /** Refuses what is not above nothing. */
  public Material {
    if (!(conductivity > 0 && density > 0 && heatCapacity > 0)) {
      throw new IllegalArgumentException(
          "k " + conductivity + ", density " + density + ", heat capacity " + heatCapacity
              + " must be above 0");
    }
  }

  /** The same with air in so much of its volume, which neither holds heat to speak of nor lets it through. */
  public Material aired(double share) {
    double solid = 1 - share;
    Ice frozen = ice == null ? null : new Ice(ice.conductivity() * solid, ice.heatCapacity(), ice.melting());
    return new Material(conductivity * solid, density * solid, heatCapacity, frozen);
  }

  /** The same, but that it lets so much heat through, W/(m K); frozen, as much more or less as thawed. */
  public Material conducting(double instead) {
    Ice frozen = ice == null ? null
        : new Ice(ice.conductivity() * instead / conductivity, ice.heatCapacity(), ice.melting());
    return new Material(instead, density, heatCapacity, frozen);
  }

  /** How fast a difference in temperature evens out, m2/s. */
  public double diffusivity() {
    return conductivity / (density * heatCapacity);
  }
}
