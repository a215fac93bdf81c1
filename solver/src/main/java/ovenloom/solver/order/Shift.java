package ovenloom.solver.order;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PositionInList;
import ai.timefold.solver.core.preview.api.move.Move;
import java.util.List;
import java.util.stream.IntStream;

/** So many places nearer to the end of the queue, or, below 0, to its head. */
public record Shift(int places) {

  private static final int NEAR = 20;

  static final List<Shift> ALL = IntStream.rangeClosed(-NEAR, NEAR)
      .filter(places -> places != 0)
      .mapToObj(Shift::new)
      .toList();

  /** Moves a turn; where the queue ends sooner, the other way. */
  Move<Order> of(PlanningListVariableMetaModel<Order, Queue, Turn> queue, Turn turn) {
    return view -> {
      PositionInList at = view.getPositionOf(queue, turn).ensureAssigned();
      int all = view.countValues(queue, at.<Queue>entity());
      int to = at.index() + places;
      to = to < 0 || to >= all ? at.index() - places : to;
      to = Math.clamp(to, 0, all - 1);
      if (to != at.index()) {
        view.moveValueInList(queue, at.<Queue>entity(), at.index(), to);
      }
    };
  }
}
