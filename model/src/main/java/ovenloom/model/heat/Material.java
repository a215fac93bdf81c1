package ovenloom.model.heat;

/**
 * What heat has to get through.
 *
 * @param conductivity W/(m K)
 * @param density kg/m3
 * @param heatCapacity J/(kg K)
 */
public record Material(double conductivity, double density, double heatCapacity) {

  /** Refuses what is not above nothing. */
  public Material {
    if (!(conductivity > 0 && density > 0 && heatCapacity > 0)) {
      throw new IllegalArgumentException(
          "k " + conductivity + ", density " + density + ", heat capacity " + heatCapacity
              + " must be above 0");
    }
  }

  /** How fast a difference in temperature evens out, m2/s. */
  public double diffusivity() {
    return conductivity / (density * heatCapacity);
  }
}
