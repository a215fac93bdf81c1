package ovenloom.solver.order;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.solver.place.Decisions;

/** A value that a variable of a step's turn may have. */
public record Option(int step, String variable, int value) {

  static final String START = "start";
  static final String BAKE = "bake";
  static final String STAY = "stay";
  static final String TOGETHER = "together";

  boolean isOfABake() {
    return variable.equals(START) || variable.equals(BAKE);
  }

  /** Those of a turn; none where there is no choice. */
  static Stream<Option> of(Turn turn) {
    return Stream.of(
        ways(turn, START, turn.starts()),
        ways(turn, BAKE, turn.waysToBake()),
        ways(turn, STAY, turn.waysToWait()),
        between(turn, TOGETHER, 1, turn.mostTogether()))
        .flatMap(options -> options);
  }

  private static Stream<Option> ways(Turn turn, String variable, int ways) {
    return ways < 2 ? Stream.empty() : between(turn, variable, Decisions.OPEN, ways - 1);
  }

  private static Stream<Option> between(Turn turn, String variable, int least, int most) {
    return least == most
        ? Stream.empty()
        : IntStream.rangeClosed(least, most).mapToObj(value -> new Option(turn.getStep(), variable, value));
  }
}
