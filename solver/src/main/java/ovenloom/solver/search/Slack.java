package ovenloom.solver.search;

import java.util.List;
import java.util.stream.IntStream;

/** Minutes a run ends before it must. */
public record Slack(int minutes) {

  static final Slack NONE = new Slack(0);

  private static final int[] MINUTES = {
      0, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 360, 480, 720, 1440, 2160, 2880, 4320
  };

  /** Those worth trying. */
  static final List<Slack> ALL = IntStream.of(MINUTES).mapToObj(Slack::new).toList();
}
