package ovenloom.model.audit;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Length;
import ovenloom.model.measure.Size;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;
import ovenloom.model.menu.Filling;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;

/**
 * A vessel with food in it.
 *
 * @param name of its kind
 * @param kind absent where the kitchen has none such
 * @param batches whose food is in it
 */
record Piece(String name, @Nullable Vessel kind, Batches batches) {

  /** Those of a run, batch by batch; of batches that share a vessel, the first one's. */
  static List<Piece> of(Case plan, Placement run) {
    return of(plan, plan.steps(run));
  }

  /** Those in which a step's food waits, batch by batch. */
  static List<Piece> of(Case plan, Stay stay) {
    return of(plan, plan.steps(stay));
  }

  private static List<Piece> of(Case plan, List<BatchStep> steps) {
    boolean one = !steps.isEmpty() && steps.getFirst().step().together().oneVessel();
    return steps.stream().limit(one ? 1 : Long.MAX_VALUE).flatMap(step -> of(plan, step)).toList();
  }

  private static Stream<Piece> of(Case plan, BatchStep step) {
    return plan.work()
        .fillingsOf(step.index())
        .stream()
        .flatMap(filling -> Stream.generate(() -> of(plan, step, filling)).limit(filling.count()));
  }

  private static Piece of(Case plan, BatchStep step, Filling filling) {
    return new Piece(filling.vessel(), plan.event().kitchen().vessel(filling.vessel()), step.batches());
  }

  /** Outside; absent where nobody gave one. */
  @Nullable
  Size size() {
    return kind == null ? null : kind.size();
  }

  /** Nothing where nobody gave one. */
  Length height() {
    Size size = size();
    Length height = size == null ? null : size.height();
    return height == null ? new Length(0) : height;
  }
}
