package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;

/** Acts in the order in which one reads them. */
final class InOrder {

  private InOrder() {}

  /** By the minute and then by turn; but nothing is put where something else is still to be taken away. */
  static List<Act> of(List<Act> acts) {
    List<Act> open = new ArrayList<>(acts.stream().sorted().toList());
    List<Act> ordered = new ArrayList<>();
    while (!open.isEmpty()) {
      Act next = next(open);
      open.remove(next);
      ordered.add(next);
    }
    return ordered;
  }

  /** Where food changes places in a circle, whatever comes first by turn begins. */
  private static Act next(List<Act> open) {
    Act first = open.getFirst();
    return open.stream()
        .takeWhile(act -> act.at() == first.at())
        .filter(act -> open.stream()
            .takeWhile(other -> other.at() == first.at())
            .noneMatch(other -> act.places().follows(other.places()) && !other.equals(act)))
        .findFirst()
        .orElse(first);
  }
}
