package ovenloom.solver.search;

import java.util.List;
import java.util.stream.IntStream;

/** Which of the ways to bake a run. */
public record Choice(int number) {

  /** The decoder chooses. */
  static final Choice OPEN = new Choice(-1);

  static List<Choice> upTo(int choices) {
    return IntStream.range(-1, choices).mapToObj(Choice::new).toList();
  }
}
