package ovenloom.model.heat;

/**
 * The heat that evaporation takes from a wet surface. As heat and vapour leave by the same layer of air, the one follows from
 * the other (Lewis).
 *
 * <p>Source: any textbook of heat transfer, such as Cengel and Ghajar, Heat and Mass Transfer, chapter 14; Antoine's equation
 * for water with the usual constants, from memory, tested at 0, 20, 60 and 100 C.
 */
final class Vapour {

  private static final double PASCAL_A_MILLIMETRE = 133.322;
  private static final double ABSOLUTE_ZERO = -273.15;

  /** What air in a kitchen holds, Pa. */
  private static final double IN_THE_AIR = 1000;

  /** Heat capacity of a cubic metre of air times its absolute temperature, J/m3. */
  private static final double AIR = 353 * 1009;
  private static final double LEWIS = 0.9;
  private static final double GAS_CONSTANT = 461.5;
  private static final double HEAT = 2.5e6;
  private static final double HEAT_LESS_A_KELVIN = 2.4e3;

  private Vapour() {}

  /** Pressure over water, Pa, from 0 C to somewhat above boiling. */
  static double pressure(double celsius) {
    return PASCAL_A_MILLIMETRE * Math.pow(10, 8.07131 - 1730.63 / (233.426 + Math.max(celsius, 0)));
  }

  /** Heat taken from a surface that is wet all over, for each W/(m2 K) that the air around it exchanges; W/m2. Below 0 never. */
  static double heat(double surface, double air) {
    double excess = pressure(surface) - IN_THE_AIR;
    if (excess <= 0) {
      return 0;
    }
    double film = (surface + air) / 2 - ABSOLUTE_ZERO;
    double vapour = excess / (GAS_CONSTANT * film);
    return vapour * (HEAT - HEAT_LESS_A_KELVIN * surface) / (AIR / film * LEWIS);
  }
}
