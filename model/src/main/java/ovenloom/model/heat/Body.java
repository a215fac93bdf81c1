package ovenloom.model.heat;

/**
 * Food as heat meets it.
 *
 * @param half from its surface to its middle, metres: half a slab's thickness, else the radius
 */
public record Body(Shape shape, double half, Material material) {

  public Body {
    if (!(half > 0)) {
      throw new IllegalArgumentException("the way to the middle, " + half + " m, is not above 0");
    }
  }

  /** Its Biot number for a heat transfer coefficient, W/(m2 K). */
  public double biot(double coefficient) {
    return coefficient * half / material.conductivity();
  }
}
