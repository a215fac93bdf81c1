package ovenloom.model.heat;

/**
 * Food as heat meets it.
 *
 * @param half from its surface to its middle, metres: half a slab's thickness, else the radius
 */
public record Body(Shape shape, double half, Material material) {

  private static final double SECONDS_A_MINUTE = 60;

  public Body {
    if (!(half > 0)) {
      throw new IllegalArgumentException("the way to the middle, " + half + " m, is not above 0");
    }
  }

  /** By which share of what is left a difference to its surroundings shrinks, for each minute; the first ones are not so. */
  public double coolingRate(double coefficient) {
    double lambda = new Conduction(shape, biot(coefficient)).firstTerm()[0];
    return lambda * lambda * material.diffusivity() / (half * half) * SECONDS_A_MINUTE;
  }

  /** The same, but that it lets so much heat through, W/(m K). */
  public Body conducting(double instead) {
    return new Body(shape, half, material.conducting(instead));
  }

  /** The same, where heat gets out on one side only: a pan that stands in ice water and whose food is open to the air above. */
  public Body oneSided() {
    return shape == Shape.SLAB ? new Body(shape, 2 * half, material) : this;
  }

  /** How much farther its middle is from its surroundings than it was all through, once the first minutes are over. */
  public double middleOverMean(double coefficient) {
    return new Conduction(shape, biot(coefficient)).firstTerm()[1];
  }

  /** Its Biot number for a heat transfer coefficient, W/(m2 K). */
  public double biot(double coefficient) {
    return coefficient * half / material.conductivity();
  }
}
