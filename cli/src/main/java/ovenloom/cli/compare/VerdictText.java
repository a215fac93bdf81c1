package ovenloom.cli.compare;

import ovenloom.cli.compare.Contender.Planned;
import ovenloom.model.plan.Score;
import ovenloom.model.variation.Standing;
import ovenloom.model.variation.Verdict;

/** Which of two is better, and whether that is beyond doubt, in a sentence. */
final class VerdictText {

  private static final String TIE = "A tie, as far as proven: ";

  private VerdictText() {}

  /** Of one, seen from the first. */
  static String of(Contender first, Contender other) {
    if (first.planned() != null && other.planned() != null && !first.servesTheSame(other)) {
      return "Both have a plan. What is cooked, or for how many, is not the same, so their points say nothing of each other.";
    }
    return switch (Verdict.of(other.standing(), first.standing())) {
      case BETTER ->
        "Better beyond doubt: " + (first.planned() == null ? "it has a plan, and there is none with "
            : "no plan is as good with ") + first.name() + ".";
      case WORSE -> "Worse beyond doubt: " + (other.planned() == null ? "there is no plan"
          : "no plan is as good as what was found with " + first.name()) + ".";
      case AHEAD -> TIE + "it is ahead" + lead(first, other) + ".";
      case BEHIND -> TIE + "it is behind" + lead(other, first) + ".";
      case LEVEL ->
        TIE + (other.planned() == null ? noneOf(first, other) : "as found, neither is ahead") + ".";
    };
  }

  private static String noneOf(Contender first, Contender other) {
    boolean isProven = first.standing() instanceof Standing.NoPlan
        && other.standing() instanceof Standing.NoPlan;
    return isProven ? "neither has a plan" : "no plan was found for either";
  }

  /** By how much one is behind another, as far as anything was found. */
  private static String lead(Contender behind, Contender ahead) {
    Planned one = behind.planned();
    Planned other = ahead.planned();
    if (one == null || other == null) {
      return ", since no plan was found for the other";
    }
    Score worse = one.plan().score();
    Score better = other.plan().score();
    long lost = worse.atTheTableInAll() - better.atTheTableInAll();
    return " as found, by " + (lost > 0 ? Rows.grouped(lost) + " points at the table"
        : Rows.grouped(worse.wishes() - better.wishes()) + " points of wishes");
  }
}
