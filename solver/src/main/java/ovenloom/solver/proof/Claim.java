package ovenloom.solver.proof;

import ovenloom.model.menu.BatchStep;

/**
 * One thing that a plan must give a step: what some of them ask together may be more than there is.
 *
 * @param what it takes, as a cook would say: {@code hands}, {@code large burners}; empty for what takes nothing
 */
public record Claim(Kind kind, BatchStep step, String what) {

  /** What is claimed. */
  public enum Kind {
    /** A share of what the kitchen has. */
    TAKES,

    /** That its food waits no longer than it keeps. */
    KEEPS,

    /** That somebody is there for it. */
    ATTENDED
  }

  static Claim takes(BatchStep step, String what) {
    return new Claim(Kind.TAKES, step, what);
  }

  static Claim keeps(BatchStep step) {
    return new Claim(Kind.KEEPS, step, "");
  }

  static Claim attended(BatchStep step) {
    return new Claim(Kind.ATTENDED, step, "");
  }
}
