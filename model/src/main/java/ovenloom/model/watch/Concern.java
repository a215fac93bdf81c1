package ovenloom.model.watch;

import java.util.Objects;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.Source;

/**
 * A limit that food is predicted not to keep.
 *
 * @param rule which, in a word
 * @param step whose food it is
 * @param minute from when on
 * @param off how far from the limit: kelvins or minutes, as its rule counts; infinite where it never gets there
 * @param what it is, in a sentence, numbers and all
 * @param source where the limit is written
 * @param help what would mend it, in a sentence
 */
public record Concern(Rule rule, BatchStep step, int minute, double off, String what, Source source,
    String help) {

  /** What a limit is for. */
  public enum Rule {
    COOKED,
    ROASTED,
    REHEATED,
    COOLED,
    LEFT_OUT,
    KEPT_HOT,
    KEPT_COLD,
    THAWED
  }

  /** Whether both say the same of a dish, of other batches or ways of it. */
  boolean isLike(Concern other) {
    return Objects.equals(step.dish().name(), other.step.dish().name())
        && step.step().name().equals(other.step.step().name())
        && rule == other.rule;
  }
}
