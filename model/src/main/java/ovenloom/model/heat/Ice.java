package ovenloom.model.heat;

/**
 * Food whose water is frozen.
 *
 * @param conductivity W/(m K)
 * @param heatCapacity J/(kg K)
 * @param melting what a kilogram of the food takes up as its ice melts, J/kg
 */
public record Ice(double conductivity, double heatCapacity, double melting) {

  /** At which it melts, C: meat, fish and vegetables at -0.6 to -2. ASHRAE Handbook Refrigeration 2006, chapter 9; from memory. */
  public static final double MELTS = -1;

  /** Refuses what is not above nothing. */
  public Ice {
    if (!(conductivity > 0 && heatCapacity > 0 && melting > 0)) {
      throw new IllegalArgumentException(
          "k " + conductivity + ", heat capacity " + heatCapacity + ", melting " + melting
              + " must be above 0");
    }
  }
}
