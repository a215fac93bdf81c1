package ovenloom.solver.exact;

import com.google.ortools.sat.Literal;
import java.util.Map;
import ovenloom.model.measure.Temperature;

/**
 * Food in one oven at a mark: a stage of a bake, or its wait at hold.
 *
 * @param stage counted from 0; the wait comes after the last
 * @param when it is there
 * @param at the choice of each mark it may be at, if it is in this oven
 */
record OvenUse(Bake bake, int stage, Span when, Map<Temperature, Literal> at) {

  boolean isAWait() {
    return stage == bake.stages().size();
  }

  boolean isFollowedBy(OvenUse next) {
    return bake.equals(next.bake) && next.stage == stage + 1;
  }
}
