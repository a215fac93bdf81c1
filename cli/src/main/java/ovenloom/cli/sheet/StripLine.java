package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.measure.Stretch;

/**
 * A place or a cook over all the time of a plan.
 *
 * @param label what it is called
 * @param marks what is there
 * @param ground what is shown where nothing is
 */
record StripLine(String label, List<Mark> marks, List<Mark> ground) {

  /** Something that is there for a while. */
  record Mark(Stretch when, char letter) {}

  StripLine {
    marks = List.copyOf(marks);
    ground = List.copyOf(ground);
  }

  StripLine and(StripLine other) {
    List<Mark> both = new ArrayList<>(marks);
    both.addAll(other.marks);
    return new StripLine(label, both, ground);
  }

  /** The letters of what is there in any of those minutes. */
  List<Character> during(Stretch when) {
    List<Character> there = during(marks, when);
    return there.isEmpty() ? during(ground, when) : there;
  }

  private static List<Character> during(List<Mark> some, Stretch when) {
    return some.stream().filter(mark -> mark.when().overlaps(when)).map(Mark::letter).distinct().toList();
  }
}
