package ovenloom.model.file;

import java.util.List;
import ovenloom.model.plan.Plan;

/**
 * What came of reading a file: the thing in it, or every mistake that could be found.
 *
 * @param <T> what the file was to hold
 */
public sealed interface Reading<T> {

  /**
   * The file was understood.
   *
   * @param sources digests of every file that was read for it
   * @param notes what is no mistake but worth a look
   */
  record Understood<T>(T value, List<Plan.Source> sources, List<Mistake> notes) implements Reading<T> {
    public Understood {
      sources = List.copyOf(sources);
      notes = List.copyOf(notes);
    }
  }

  /**
   * The file was not understood.
   *
   * @param mistakes at least one, in the order of their places
   */
  record Mistaken<T>(List<Mistake> mistakes) implements Reading<T> {
    public Mistaken {
      mistakes = List.copyOf(mistakes);
    }

    /** Whether all is well written, and asks for what cannot be done. */
    public boolean isWellWritten() {
      return mistakes.stream().allMatch(each -> each.fault() instanceof Fault.Impossible);
    }
  }
}
