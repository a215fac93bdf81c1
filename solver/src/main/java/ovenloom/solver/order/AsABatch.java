package ovenloom.solver.order;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningListVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.domain.metamodel.PositionInList;
import ai.timefold.solver.core.preview.api.move.Move;
import java.util.List;

/**
 * A batch of a step is done as another batch of it is, and has its turn right after it: where one was moved to another day, the rest follow
 * at once.
 */
record AsABatch(
    PlanningListVariableMetaModel<Order, Queue, Turn> queue,
    List<PlanningVariableMetaModel<Order, Turn, Integer>> decided) {

  Move<Order> of(Turn one, Turn other) {
    return view -> {
      decided.forEach(variable -> view.changeVariable(variable, one, view.getValue(variable, other)));
      PositionInList from = view.getPositionOf(queue, one).ensureAssigned();
      int to = view.getPositionOf(queue, other).ensureAssigned().index();
      int behind = to < from.index() ? to + 1 : to;
      if (behind != from.index()) {
        view.moveValueInList(queue, from.<Queue>entity(), from.index(), behind);
      }
    };
  }
}
