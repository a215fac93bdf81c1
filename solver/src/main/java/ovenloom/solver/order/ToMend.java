package ovenloom.solver.order;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.MutableSolutionView;
import java.util.Objects;

/** Changes a step that came out wrong: it chooses sooner, ahead of what was in its way, or is done at another time. */
final class ToMend {

  private final PlanningListVariableMetaModel<Order, Queue, Turn> queue;
  private final PlanningVariableMetaModel<Order, Turn, Integer> earlier;

  ToMend(
      PlanningListVariableMetaModel<Order, Queue, Turn> queue,
      PlanningVariableMetaModel<Order, Turn, Integer> earlier) {
    this.queue = queue;
    this.earlier = earlier;
  }

  Move<Order> nudge(Turn any, Nudge nudge) {
    int step = any.amiss().insteadOf(any.getStep());
    return view -> {
      Queue all = queueOf(view, any);
      Turn turn = view.getValueAtIndex(queue, all, Meeting.indexOf(view, queue, all, step));
      view.changeVariable(earlier, turn,
          nudge.from(Objects.requireNonNull(turn.getEarlier()), turn.serves()));
    };
  }

  Move<Order> ahead(Turn any, Shift shift) {
    int step = any.amiss().insteadOf(any.getStep());
    return view -> {
      Queue all = queueOf(view, any);
      int from = Meeting.indexOf(view, queue, all, step);
      int to = Math.max(0, from - Math.abs(shift.places()));
      if (to != from) {
        view.moveValueInList(queue, all, from, to);
      }
    };
  }

  private Queue queueOf(MutableSolutionView<Order> view, Turn turn) {
    return view.getPositionOf(queue, turn).ensureAssigned().entity();
  }
}
