package ovenloom.model.heat;

import java.util.Arrays;

/**
 * How warm food is, from its middle to its surface, in degrees Celsius; and how that changes in what surrounds it.
 *
 * <p>Layers of one thickness pass heat to each other; each step is solved backwards in time, so that no step is too long to be
 * stable. Food that is as warm inside as outside (a Biot number up to 0.1) needs no layers, but has them.
 */
public final class TemperatureProfile {

  private static final int LAYERS = 24;
  private static final double SECONDS_A_STEP = 10;
  private static final int STEPS_A_MINUTE = 6;
  private static final double THE_SAME = 0.05;
  private static final double A_DIFFERENCE = 0.01;

  /** Of water, C. */
  private static final double BOILING = 100;

  private final Body body;
  private final double[] celsius;
  private double surface;

  private TemperatureProfile(Body body, double[] celsius, double surface) {
    this.body = body;
    this.celsius = celsius;
    this.surface = surface;
  }

  /** Food that is as warm all through. */
  public static TemperatureProfile uniform(Body body, double celsius) {
    double[] all = new double[LAYERS];
    Arrays.fill(all, celsius);
    return new TemperatureProfile(body, all, celsius);
  }

  /** Whether it is so warm all through, within a twentieth of a kelvin. */
  public boolean isAsWarmAs(double everywhere) {
    return Math.abs(middle() - everywhere) < THE_SAME && Math.abs(surface - everywhere) < THE_SAME;
  }

  /** In its middle. */
  public double middle() {
    return celsius[0];
  }

  /** At its surface. */
  public double surface() {
    return surface;
  }

  /** All of it stirred together. */
  public double mean() {
    double sum = 0;
    for (int i = 0; i < LAYERS; i++) {
      sum += celsius[i] * body.shape().volume(i);
    }
    return sum / body.shape().face(LAYERS) / LAYERS;
  }

  /** The same food, with what is hotter than boiling water back at that: under a lid there is steam, and no crust. */
  public TemperatureProfile noHotterThanBoiling() {
    if (surface <= BOILING && celsius[LAYERS - 1] <= BOILING) {
      return this;
    }
    double[] boiling = Arrays.stream(celsius).map(each -> Math.min(each, BOILING)).toArray();
    return new TemperatureProfile(body, boiling, Math.min(surface, BOILING));
  }

  /** The same food, as warm all through: stirred, or cut up and mixed. */
  public TemperatureProfile evenedOut(double everywhere) {
    return uniform(body, everywhere);
  }

  /** The same food in another shape: cut up, or poured from one vessel into another. */
  public TemperatureProfile reshaped(Body into) {
    return into.equals(body) ? this : uniform(into, mean());
  }

  /** The same food, taken to be thicker or thinner than it was, each part as warm as before. */
  public TemperatureProfile stretched(Body into) {
    return new TemperatureProfile(into, celsius.clone(), surface);
  }

  /** The same food after so many minutes there. */
  public TemperatureProfile after(int minutes, Surroundings there) {
    TemperatureProfile then = new TemperatureProfile(body, celsius.clone(), surface);
    for (int step = 0; step < minutes * STEPS_A_MINUTE; step++) {
      then.step(there);
    }
    return then;
  }

  /** Solves for all layers at once, from the middle out and back. */
  private void step(Surroundings there) {
    double thickness = body.half() / LAYERS;
    double pass = body.material().conductivity() / thickness;
    double keep = body.material().density() * body.material().heatCapacity() * thickness / SECONDS_A_STEP;
    double air = there.air().inCelsius();
    double taken = there.wetness() * there.coefficient() * Vapour.heat(surface, air);
    double steeper = there.wetness() * there.coefficient()
        * (Vapour.heat(surface + A_DIFFERENCE, air) - Vapour.heat(surface, air)) / A_DIFFERENCE;
    double outside = there.coefficient() + steeper;
    double towards = (there.coefficient() * air - taken + steeper * surface) / outside;
    double through = 1 / (1 / outside + thickness / (2 * body.material().conductivity()));

    Shape shape = body.shape();
    double[] factor = new double[LAYERS];
    double inner = 0;
    for (int i = 0; i < LAYERS; i++) {
      double outer = shape.face(i + 1) * (i == LAYERS - 1 ? through : pass);
      double store = keep * shape.volume(i) / shape.sides();
      double diagonal = store + inner + outer - (i == 0 ? 0 : inner * factor[i - 1]);
      double right = store * celsius[i] + inner * (i == 0 ? 0 : celsius[i - 1])
          + (i == LAYERS - 1 ? outer * towards : 0);
      factor[i] = i == LAYERS - 1 ? 0 : outer / diagonal;
      celsius[i] = right / diagonal;
      inner = outer;
    }
    for (int i = LAYERS - 2; i >= 0; i--) {
      celsius[i] += factor[i] * celsius[i + 1];
    }
    surface = towards + (celsius[LAYERS - 1] - towards) * through / outside;
  }
}
