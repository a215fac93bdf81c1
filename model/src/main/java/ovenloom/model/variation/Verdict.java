package ovenloom.model.variation;

import ovenloom.model.variation.Standing.Fits;
import ovenloom.model.variation.Standing.NoPlan;
import ovenloom.model.variation.Standing.NoneFound;

/**
 * How one stands to another. Only {@link #BETTER} and {@link #WORSE} are beyond doubt, however long anybody looks; the three
 * between them are a tie as far as anything is proven.
 */
public enum Verdict {

  /** Its plan is better than any plan of the other can be, or the other has none. */
  BETTER,

  /** What was found of it is better than what was found of the other. */
  AHEAD,

  /** What was found of both is as good. */
  LEVEL,

  /** What was found of the other is better. */
  BEHIND,

  /** The other is better beyond doubt. */
  WORSE;

  /** That of one, seen from another. */
  public static Verdict of(Standing one, Standing other) {
    if (isBetter(one, other)) {
      return BETTER;
    }
    if (isBetter(other, one)) {
      return WORSE;
    }
    if (isAhead(one, other)) {
      return AHEAD;
    }
    return isAhead(other, one) ? BEHIND : LEVEL;
  }

  private static boolean isBetter(Standing one, Standing other) {
    return one instanceof Fits plan && switch (other) {
      case NoPlan() -> true;
      case NoneFound() -> false;
      case Fits found -> found.bound() != null && plan.isBelow(found.bound(), found.weights());
    };
  }

  private static boolean isAhead(Standing one, Standing other) {
    return one instanceof Fits plan && switch (other) {
      case NoPlan() -> true;
      case NoneFound() -> true;
      case Fits found -> plan.isBelow(found.mark(), found.weights());
    };
  }
}
