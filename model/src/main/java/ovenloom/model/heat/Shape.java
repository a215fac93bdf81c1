package ovenloom.model.heat;

import org.apache.commons.math3.special.BesselJ;

/** How heat gets to the middle of food: from two sides, from around, or from everywhere. */
public enum Shape {
  SLAB(1),
  CYLINDER(2),
  SPHERE(3);

  private final int sides;

  Shape(int sides) {
    this.sides = sides;
  }

  /** How much surface there is to a volume, times half the thickness or the radius. */
  public int sides() {
    return sides;
  }

  /** How much a layer holds, counted from the middle; all up to a face hold as much as that face times its layers. */
  double volume(int layer) {
    return face(layer + 1) * (layer + 1) - face(layer) * layer;
  }

  /** How wide the way is from so many layers to the next. */
  double face(int layers) {
    return switch (this) {
      case SLAB -> 1;
      case CYLINDER -> layers;
      case SPHERE -> (double) layers * layers;
    };
  }

  /** What is zero where one of the terms of the series lies. */
  double root(double lambda, double biot) {
    return switch (this) {
      case SLAB -> lambda * Math.sin(lambda) - biot * Math.cos(lambda);
      case CYLINDER -> lambda * BesselJ.value(1, lambda) - biot * BesselJ.value(0, lambda);
      case SPHERE -> lambda * Math.cos(lambda) + (biot - 1) * Math.sin(lambda);
    };
  }

  /** What a term has of the whole, in the middle. */
  double weight(double lambda) {
    return switch (this) {
      case SLAB -> 4 * Math.sin(lambda) / (2 * lambda + Math.sin(2 * lambda));
      case CYLINDER -> {
        double j0 = BesselJ.value(0, lambda);
        double j1 = BesselJ.value(1, lambda);
        yield 2 / lambda * j1 / (j0 * j0 + j1 * j1);
      }
      case SPHERE -> 4 * (Math.sin(lambda) - lambda * Math.cos(lambda)) / (2 * lambda - Math.sin(2 * lambda));
    };
  }

  /** What of a term's middle there is at the surface. */
  double atTheSurface(double lambda) {
    return switch (this) {
      case SLAB -> Math.cos(lambda);
      case CYLINDER -> BesselJ.value(0, lambda);
      case SPHERE -> Math.sin(lambda) / lambda;
    };
  }
}
