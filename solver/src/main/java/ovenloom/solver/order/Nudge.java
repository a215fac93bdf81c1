package ovenloom.solver.order;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.builtin.Moves;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** So many minutes earlier, or, below 0, later. */
public record Nudge(int minutes) {

  private static final int LONG = 15;
  private static final int FINE = 20;
  private static final int AS_LATE_AS_IT_FITS = -1_000_000;

  /** Those worth trying, for a clock in minutes. */
  static List<Nudge> all(int clock) {
    IntStream fine = IntStream.rangeClosed(1, FINE).map(ticks -> ticks * clock);
    IntStream coarse = IntStream.of(15, 30, 60, 120, 240, 480, 720, 1440, 2880);
    int[] earlier = IntStream.concat(fine, coarse).sorted().distinct().toArray();
    IntStream later = IntStream.of(earlier).map(minutes -> -minutes);
    IntStream notAtAll = IntStream.of(AS_LATE_AS_IT_FITS);
    return IntStream.concat(IntStream.concat(IntStream.of(earlier), later), notAtAll)
        .mapToObj(Nudge::new)
        .toList();
  }

  Move<Order> of(PlanningVariableMetaModel<Order, Turn, Integer> earlier, Turn turn) {
    return Moves.change(earlier, turn, from(Objects.requireNonNull(turn.getEarlier()), turn.serves()));
  }

  /** What so many minutes become by it; for a step that serves, which waits for a few minutes or not at all, a long one ends its wait. */
  public int from(int now, boolean serves) {
    boolean ends = serves && Math.abs(minutes) >= LONG;
    return ends ? 0 : Math.clamp(now + minutes, 0, Turn.MOST_MINUTES_EARLIER);
  }
}
