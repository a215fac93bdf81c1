package ovenloom.model.kitchen;

/**
 * How the air in a cold or hot place moves, and so how much heat it takes or gives. The figures are engineering estimates: 5
 * to 10 W/(m2 K) in a fridge, 10 to 25 where a fan blows, 100 to 500 in ice water that nobody stirs; common practice for a blast
 * chiller.
 */
public enum Air {
  /** A fridge at home. */
  STILL(8),

  /** A walk-in with a fan. */
  MOVING(18),

  /** A blast chiller. */
  BLAST(45),

  /** No air at all: a sink or a tub of water with ice in it. */
  ICE_WATER(100);

  private final double coefficient;

  Air(double coefficient) {
    this.coefficient = coefficient;
  }

  /** Heat transfer, W/(m2 K). */
  public double coefficient() {
    return coefficient;
  }
}
