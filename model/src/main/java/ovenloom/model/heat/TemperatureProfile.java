package ovenloom.model.heat;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

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

  /** J/(kg K): as good as without end. */
  private static final double WHILE_IT_MELTS = 1e8;

  /** Of water, C. */
  private static final double BOILING = 100;

  private final Body body;
  private final double[] celsius;
  private final double[] unmelted;
  private double surface;
  private @Nullable Layers thawed;

  /**
   * By layers, from the middle out.
   *
   * @param unmelted what their ice will take up until it has melted, J/kg of food
   */
  private TemperatureProfile(Body body, double[] celsius, double[] unmelted, double surface) {
    this.body = body;
    this.celsius = celsius;
    this.unmelted = unmelted;
    this.surface = surface;
  }

  /** Food that is as warm all through; frozen, where that is below freezing. */
  public static TemperatureProfile uniform(Body body, double celsius) {
    return uniform(body, celsius, celsius < Ice.MELTS ? 1 : 0);
  }

  /** So much of its water that freezes is ice. */
  private static TemperatureProfile uniform(Body body, double celsius, double frozen) {
    Ice ice = body.material().ice();
    double[] all = new double[LAYERS];
    double[] unmelted = new double[LAYERS];
    Arrays.fill(all, celsius);
    Arrays.fill(unmelted, ice == null ? 0 : frozen * ice.melting());
    return new TemperatureProfile(body, all, unmelted, celsius);
  }

  /** As much of each of these, put together and evened out: none of their heat is lost. */
  public static TemperatureProfile together(Body body, List<TemperatureProfile> parts) {
    return ofHeat(body,
        parts.stream().mapToDouble(part -> part.reshaped(body).heat()).average().orElseThrow());
  }

  /** So warm all through that it holds so much heat, J/kg: none as water at melting. */
  private static TemperatureProfile ofHeat(Body body, double heat) {
    Ice ice = body.material().ice();
    if (ice == null || heat >= 0) {
      return uniform(body, Ice.MELTS + heat / body.material().heatCapacity(), 0);
    }
    double below = Math.min(0, heat + ice.melting());
    return uniform(body, Ice.MELTS + below / ice.heatCapacity(), Math.min(1, -heat / ice.melting()));
  }

  /** Of all layers, J/kg. */
  private double heat() {
    double[] capacity = asIceOrWater();
    double[] all = new double[LAYERS];
    for (int i = 0; i < LAYERS; i++) {
      all[i] = (celsius[i] - Ice.MELTS) * capacity[i] - unmelted[i];
    }
    return mean(all);
  }

  /** Whether there is ice in it. */
  public boolean isFrozen() {
    return frozen() > 0;
  }

  /** How much of its water that freezes is ice: 0 to 1. */
  public double frozen() {
    Ice ice = body.material().ice();
    return ice == null ? 0 : mean(unmelted) / ice.melting();
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
    return mean(celsius);
  }

  private double mean(double[] layers) {
    double sum = 0;
    for (int i = 0; i < LAYERS; i++) {
      sum += layers[i] * body.shape().volume(i);
    }
    return sum / body.shape().face(LAYERS) / LAYERS;
  }

  /** The same food, with what is hotter than boiling water back at that: under a lid there is steam, and no crust. */
  public TemperatureProfile noHotterThanBoiling() {
    if (surface <= BOILING && celsius[LAYERS - 1] <= BOILING) {
      return this;
    }
    double[] boiling = Arrays.stream(celsius).map(each -> Math.min(each, BOILING)).toArray();
    return new TemperatureProfile(body, boiling, unmelted, Math.min(surface, BOILING));
  }

  /** The same food, stirred. */
  public TemperatureProfile stirred() {
    return isFrozen() ? ofHeat(body, heat()) : uniform(body, mean(), 0);
  }

  /** The same food, made so warm all through. */
  public TemperatureProfile evenedOut(double everywhere) {
    return uniform(body, everywhere);
  }

  /** The same food in another shape: cut up, or poured from one vessel into another. */
  public TemperatureProfile reshaped(Body into) {
    if (into.equals(body)) {
      return this;
    }
    TemperatureProfile even = stirred();
    return uniform(into, even.middle(), even.frozen());
  }

  /** The same food, taken to be thicker or thinner than it was, each part as warm as before. */
  public TemperatureProfile stretched(Body into) {
    return new TemperatureProfile(into, celsius.clone(), unmelted.clone(), surface);
  }

  /** The same food after so many minutes there. */
  public TemperatureProfile after(int minutes, Surroundings there) {
    boolean isThawed = isThawed(there);
    double[] ice = isThawed ? unmelted : unmelted.clone();
    TemperatureProfile then = new TemperatureProfile(body, celsius.clone(), ice, surface);
    then.thawed = isThawed ? layers() : null;
    for (int step = 0; step < minutes * STEPS_A_MINUTE; step++) {
      then.step(there);
    }
    return then;
  }

  /** Whether nothing in it is frozen, or freezes there. */
  private boolean isThawed(Surroundings there) {
    if (body.material().ice() == null) {
      return true;
    }
    boolean isThawed = there.air().inCelsius() >= Ice.MELTS;
    for (int i = 0; i < LAYERS && isThawed; i++) {
      isThawed = unmelted[i] == 0 && celsius[i] >= Ice.MELTS;
    }
    return isThawed;
  }

  private Layers layers() {
    return thawed == null ? new Layers(body, LAYERS, SECONDS_A_STEP) : thawed;
  }

  private void step(Surroundings there) {
    double air = there.air().inCelsius();
    double outside = there.coefficient();
    double towards = air;
    if (there.wetness() > 0) {
      double vapour = Vapour.heat(surface, air);
      double taken = there.wetness() * there.coefficient() * vapour;
      double steeper = there.wetness() * there.coefficient()
          * (Vapour.heat(surface + A_DIFFERENCE, air) - vapour) / A_DIFFERENCE;
      outside = there.coefficient() + steeper;
      towards = (there.coefficient() * air - taken + steeper * surface) / outside;
    }
    double skin = body.half() / LAYERS / (2 * conductivity(LAYERS - 1));
    double through = 1 / (1 / outside + skin);
    if (thawed == null) {
      conduct(through, towards);
    } else {
      thawed.step(celsius, through * body.shape().face(LAYERS), towards);
    }
    surface = towards + (celsius[LAYERS - 1] - towards) * through / outside;
  }

  /** Solves for all layers at once, from the middle out and back. */
  private void conduct(double through, double towards) {
    double thickness = body.half() / LAYERS;
    Shape shape = body.shape();
    double[] capacity = heatCapacity();
    double[] factor = new double[LAYERS];
    double inner = 0;
    for (int i = 0; i < LAYERS; i++) {
      double outer = shape.face(i + 1) * (i == LAYERS - 1 ? through : between(i) / thickness);
      double store = body.material().density() * capacity[i] * thickness / SECONDS_A_STEP
          * shape.volume(i) / shape.sides();
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
    meltAndFreeze(capacity);
  }

  private double conductivity(int layer) {
    Ice ice = body.material().ice();
    double thawed = body.material().conductivity();
    return ice == null ? thawed
        : thawed + (ice.conductivity() - thawed) * unmelted[layer] / ice.melting();
  }

  /** Of a layer and the next one out, half of the way in each. */
  private double between(int layer) {
    double one = conductivity(layer);
    double next = conductivity(layer + 1);
    return one == next ? one : 2 * one * next / (one + next);
  }

  /** By layers; while one melts or freezes, no heat changes its temperature. */
  private double[] heatCapacity() {
    double[] all = asIceOrWater();
    Ice ice = body.material().ice();
    for (int i = 0; ice != null && i < LAYERS; i++) {
      boolean isBetween = unmelted[i] > 0 && unmelted[i] < ice.melting();
      all[i] = isBetween ? WHILE_IT_MELTS : all[i];
    }
    return all;
  }

  private double[] asIceOrWater() {
    double[] all = new double[LAYERS];
    Ice ice = body.material().ice();
    for (int i = 0; i < LAYERS; i++) {
      all[i] = ice != null && unmelted[i] > 0 ? ice.heatCapacity() : body.material().heatCapacity();
    }
    return all;
  }

  /** Heat above melting goes into what ice there is, and what is missing below comes out of what water there is. */
  private void meltAndFreeze(double[] capacity) {
    Ice ice = body.material().ice();
    for (int i = 0; ice != null && i < LAYERS; i++) {
      double above = (celsius[i] - Ice.MELTS) * capacity[i];
      double left = Math.clamp(unmelted[i] - above, 0, ice.melting());
      double rest = above - (unmelted[i] - left);
      celsius[i] = left == unmelted[i] ? celsius[i]
          : Ice.MELTS + rest / (rest > 0 ? body.material().heatCapacity() : ice.heatCapacity());
      unmelted[i] = left;
    }
  }
}
