package ovenloom.solver.order;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PositionInList;
import ai.timefold.solver.core.preview.api.move.Move;
import ai.timefold.solver.core.preview.api.move.MutableSolutionView;

/** Two steps that may be baked in one oven at one setting: the first goes where the other is, and right after it. */
public record Meeting(int step, int way, int other, int othersWay) {

  Move<Order> of(
      PlanningListVariableMetaModel<Order, Queue, Turn> queue,
      PlanningVariableMetaModel<Order, Turn, Integer> bake,
      Turn turn) {
    return view -> {
      PositionInList from = view.getPositionOf(queue, turn).ensureAssigned();
      Queue entity = from.entity();
      int to = indexOf(view, queue, entity, other);
      view.changeVariable(bake, turn, way);
      view.changeVariable(bake, view.getValueAtIndex(queue, entity, to), othersWay);
      int behind = to < from.index() ? to + 1 : to;
      if (behind != from.index()) {
        view.moveValueInList(queue, entity, from.index(), behind);
      }
    };
  }

  static int indexOf(
      MutableSolutionView<Order> view,
      PlanningListVariableMetaModel<Order, Queue, Turn> queue,
      Queue entity,
      int step) {
    for (int index = 0; index < view.countValues(queue, entity); index++) {
      if (view.getValueAtIndex(queue, entity, index).getStep() == step) {
        return index;
      }
    }
    throw new IllegalStateException("step " + step + " is not in the queue");
  }
}
