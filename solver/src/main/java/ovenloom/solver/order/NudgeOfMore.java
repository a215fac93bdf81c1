package ovenloom.solver.order;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.MutableSolutionView;
import java.util.Objects;

/** Nudges a turn, and at once what it hangs together with: each alone would cost before all pay. */
final class NudgeOfMore {

  private final PlanningListVariableMetaModel<Order, Queue, Turn> queue;
  private final PlanningVariableMetaModel<Order, Turn, Integer> earlier;

  NudgeOfMore(
      PlanningListVariableMetaModel<Order, Queue, Turn> queue,
      PlanningVariableMetaModel<Order, Turn, Integer> earlier) {
    this.queue = queue;
    this.earlier = earlier;
  }

  /** A step and the one that takes its food. */
  Move<Order> withTaker(Turn turn, Nudge nudge) {
    return view -> {
      nudge(view, turn, nudge);
      if (turn.taker() != Turn.THE_TABLE) {
        Queue all = queueOf(view, turn);
        nudge(view, view.getValueAtIndex(queue, all, Meeting.indexOf(view, queue, all, turn.taker())), nudge);
      }
    };
  }

  /** A step and the one placed right after it. */
  Move<Order> withNext(Turn turn, Nudge nudge) {
    return view -> {
      nudge(view, turn, nudge);
      Queue all = queueOf(view, turn);
      int next = view.getPositionOf(queue, turn).ensureAssigned().index() + 1;
      if (next < view.countValues(queue, all)) {
        nudge(view, view.getValueAtIndex(queue, all, next), nudge);
      }
    };
  }

  /** All batches of a step. */
  Move<Order> withBatches(Turn turn, Nudge nudge) {
    return view -> {
      Queue all = queueOf(view, turn);
      for (int i = 0; i < view.countValues(queue, all); i++) {
        Turn other = view.getValueAtIndex(queue, all, i);
        if (other.isABatchWith(turn)) {
          nudge(view, other, nudge);
        }
      }
    };
  }

  private Queue queueOf(MutableSolutionView<Order> view, Turn turn) {
    return view.getPositionOf(queue, turn).ensureAssigned().entity();
  }

  private void nudge(MutableSolutionView<Order> view, Turn turn, Nudge nudge) {
    int now = Objects.requireNonNull(turn.getEarlier());
    view.changeVariable(earlier, turn, nudge.from(now, turn.serves()));
  }
}
