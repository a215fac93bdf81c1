package ovenloom.model.tally;

import java.util.EnumMap;
import java.util.Map;
import ovenloom.model.variation.Result.Answer;

/** How many runs ended how. */
public final class Answers {

  private final Map<Answer, Long> counts = new EnumMap<>(Answer.class);

  void add(Answer answer) {
    counts.merge(answer, 1L, Long::sum);
  }

  public long of(Answer answer) {
    return counts.getOrDefault(answer, 0L);
  }

  public long all() {
    return counts.values().stream().mapToLong(Long::longValue).sum();
  }

  /** Those that were not planned at all. */
  public long wrong() {
    return of(Answer.MISTAKEN) + of(Answer.FAILED);
  }
}
