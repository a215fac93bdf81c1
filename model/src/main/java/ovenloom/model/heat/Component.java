package ovenloom.model.heat;

/**
 * What food is made of, each with its conductivity, density and heat capacity as polynomials of the temperature in degrees
 * Celsius, from -40 to 150.
 *
 * <p>Source: Choi and Okos 1986, as in ASHRAE Handbook Refrigeration 2006, chapter 9, table 1. The heat capacity of fibre is
 * from memory, as is ice (chapter 9, table 2).
 */
@SuppressWarnings("ImmutableEnumChecker") // a record of three numbers never changes
public enum Component {
  WATER(curve(0.57109, 1.7625e-3, -6.7036e-6), curve(997.18, 3.1439e-3, -3.7574e-3),
      curve(4.1762, -9.0864e-5, 5.4731e-6)),
  ICE(curve(2.2196, -6.2489e-3, 1.0154e-4), curve(916.89, -0.13071, 0),
      curve(2.0623, 6.0769e-3, 0)),
  PROTEIN(curve(0.17881, 1.1958e-3, -2.7178e-6), curve(1329.9, -0.5184, 0),
      curve(2.0082, 1.2089e-3, -1.3129e-6)),
  FAT(curve(0.18071, -2.7604e-4, -1.7749e-7), curve(925.59, -0.41757, 0),
      curve(1.9842, 1.4733e-3, -4.8008e-6)),
  CARBOHYDRATE(curve(0.20141, 1.3874e-3, -4.3312e-6), curve(1599.1, -0.31046, 0),
      curve(1.5488, 1.9625e-3, -5.9399e-6)),
  FIBRE(curve(0.18331, 1.2497e-3, -3.1683e-6), curve(1311.5, -0.36589, 0),
      curve(1.8459, 1.8306e-3, -4.6509e-6)),
  ASH(curve(0.32962, 1.4011e-3, -2.9069e-6), curve(2423.8, -0.28063, 0),
      curve(1.0926, 1.8896e-3, -3.6817e-6));

  /** A polynomial of the second degree. */
  private record Curve(double constant, double linear, double square) {

    double at(double celsius) {
      return constant + celsius * (linear + celsius * square);
    }
  }

  private static final double JOULES = 1000;

  private final Curve conductivity;
  private final Curve density;
  private final Curve heatCapacity;

  Component(Curve conductivity, Curve density, Curve heatCapacity) {
    this.conductivity = conductivity;
    this.density = density;
    this.heatCapacity = heatCapacity;
  }

  private static Curve curve(double constant, double linear, double square) {
    return new Curve(constant, linear, square);
  }

  Material at(double celsius) {
    return new Material(conductivity.at(celsius), density.at(celsius), JOULES * heatCapacity.at(celsius));
  }
}
