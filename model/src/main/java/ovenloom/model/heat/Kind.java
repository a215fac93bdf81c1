package ovenloom.model.heat;

import ovenloom.model.measure.Length;
import ovenloom.model.measure.Temperature;

/**
 * What food is, as heat meets it, so that nobody must know a conductivity. All figures are common practice, the compositions
 * near those of food tables.
 */
public enum Kind {
  /** Layers or a stew in a dish, as deep as it is filled. */
  CASSEROLE(Shape.SLAB, 50, 0, 0.1, 74),

  /** One piece of meat; what dries on it is a crust. */
  DENSE_ROAST(Shape.SPHERE, 120, 0.1, 0.1, 63),

  /** Side by side, in one layer. */
  TRAY_OF_PIECES(Shape.SLAB, 25, 0.045, 0.1, 85),

  /** Soup, sauce or drink. */
  LIQUID(Shape.SLAB, 60, 0, 0.25, 74),

  /** Loaves, cakes and pastry. */
  BREAD(Shape.SLAB, 60, 0.02, 0.02, 95),

  /** What sets by its eggs. */
  CUSTARD(Shape.SLAB, 40, 0, 0.1, 80),

  /** With bones and a hollow, of which four tenths are in the way of the heat. */
  WHOLE_BIRD(Shape.SPHERE, 130, 0.06, 0.06, 74);

  /** Air in loaves, cakes and pastry, of their volume: between a loaf, a third of a kilogram a litre, and a tart, twice that. */
  private static final double CRUMB = 0.6;

  /** At which its properties are taken, C: half way between a fridge and boiling. */
  private static final double MIDDLING = 50;

  /** Between dry food and its lid or foil, W/(m2 K): 2 cm of air, and mostly what is radiated. An engineering estimate. */
  private static final double OVER_DRY_FOOD = 6;

  /** Between wet food and its lid, on which its vapour condenses, W/(m2 K). An engineering estimate. */
  private static final double OVER_WET_FOOD = 20;

  private final Shape shape;
  private final double millimetres;
  private final double wetness;
  private final double open;
  private final double done;

  Kind(Shape shape, double millimetres, double wetness, double open, double done) {
    this.shape = shape;
    this.millimetres = millimetres;
    this.wetness = wetness;
    this.open = open;
    this.done = done;
  }

  private Composition composition() {
    return switch (this) {
      case CASSEROLE -> new Composition(0.72, 0.08, 0.06, 0.11, 0.02, 0.01);
      case DENSE_ROAST -> new Composition(0.74, 0.20, 0.04, 0.005, 0, 0.015);
      case TRAY_OF_PIECES -> new Composition(0.79, 0.02, 0.01, 0.15, 0.02, 0.01);
      case LIQUID -> new Composition(0.88, 0.02, 0.03, 0.05, 0.01, 0.01);
      case BREAD -> new Composition(0.38, 0.08, 0.05, 0.45, 0.03, 0.01);
      case CUSTARD -> new Composition(0.70, 0.06, 0.10, 0.13, 0, 0.01);
      case WHOLE_BIRD -> new Composition(0.70, 0.19, 0.09, 0.005, 0, 0.015);
    };
  }

  /** A body of it, so thick or so deep, and made of what it mostly is. */
  public Body body(Length thick) {
    return body(thick, composition());
  }

  /** The same, made of that. */
  public Body body(Length thick, Composition madeOf) {
    Material solid = madeOf.at(Temperature.celsius(MIDDLING));
    return new Body(shape, thick.micrometres() / 2e6, this == BREAD ? solid.aired(CRUMB) : solid);
  }

  /** How thick it is where nobody says. */
  public Length thickness() {
    return Length.mm(millimetres);
  }

  /** How much of the vapour that it would give off in an oven gets away. */
  public double wetness() {
    return wetness;
  }

  /**
   * How much of it gets away off the heat, with nothing over it. A liquid is open above only, and half of the heat it loses there
   * is radiated, which takes no vapour along: a quarter. Of other food its crust or skin lets through what it does in the oven,
   * or a tenth. Common practice.
   */
  public double open() {
    return open;
  }

  /** What there is between it and a lid or foil, W/(m2 K). */
  public double lid() {
    return fillsItsVessel() ? OVER_WET_FOOD : OVER_DRY_FOOD;
  }

  /** How warm its middle is when it is done, where nobody says. */
  public Temperature done() {
    return Temperature.celsius(done);
  }

  /** Whether it is as deep as the vessel it is in. */
  public boolean fillsItsVessel() {
    return this == CASSEROLE || this == LIQUID || this == CUSTARD;
  }
}
