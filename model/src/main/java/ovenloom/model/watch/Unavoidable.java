package ovenloom.model.watch;

import java.util.List;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.Source;

/**
 * A limit that food will not keep in any plan, by what its menu and its kitchen say alone.
 *
 * @param step whose food it is, or that asks for it
 * @param keys of the step, from the outside in, that ask for it; of its dish where the first is {@code dish}
 * @param off how far from the limit at least: kelvins or minutes
 * @param what it is, in a sentence, numbers and all
 * @param source where the limit is written
 * @param help what would mend it, in a sentence
 */
public record Unavoidable(BatchStep step, List<String> keys, double off, String what, Source source,
    String help) {

  public Unavoidable {
    keys = List.copyOf(keys);
  }

  /** Whether both ask for the same, of other batches or by another limit. */
  boolean isLike(Unavoidable other) {
    return step.dish().name().equals(other.step.dish().name())
        && step.step().name().equals(other.step.step().name())
        && keys.equals(other.keys);
  }
}
