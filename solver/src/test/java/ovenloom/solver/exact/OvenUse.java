package ovenloom.solver.exact;

import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Temperature;

/**
 * Food in one oven at a mark: a stage of a bake, or its wait at hold.
 *
 * @param stage counted from 0; the wait comes after the last
 * @param when it is there
 * @param at the choice of each mark it may be at, if it is in this oven
 */
record OvenUse(Bake bake, int stage, Span when, Map<Temperature, Literal> at) {

  /** All that may be in an oven. */
  static List<OvenUse> all(Cp cp, Oven oven, List<Bake> bakes) {
    return bakes.stream()
        .filter(bake -> bake.canBeIn(oven))
        .flatMap(bake -> Stream.concat(stages(oven, bake), waits(cp, oven, bake)))
        .toList();
  }

  private static Stream<OvenUse> stages(Oven oven, Bake bake) {
    return IntStream.range(0, bake.stages().size())
        .mapToObj(stage -> new OvenUse(bake, stage, bake.stages().get(stage), marks(oven, bake, stage)));
  }

  private static Map<Temperature, Literal> marks(Oven oven, Bake bake, int stage) {
    Map<Temperature, Literal> at = new TreeMap<>();
    for (Bake.Way way : bake.ways()) {
      if (way.oven().equals(oven)) {
        at.computeIfAbsent(way.marks().get(stage).temperature(), mark -> bake.at(oven, stage, mark));
      }
    }
    return at;
  }

  private static Stream<OvenUse> waits(Cp cp, Oven oven, Bake bake) {
    Wait wait = bake.afterwards();
    if (wait == null || wait.hold().isEmpty()) {
      return Stream.empty();
    }
    Literal held = cp.both(bake.in(oven), wait.hold().getFirst());
    return Stream.of(new OvenUse(bake, bake.stages().size(), cp.span(wait.from(), wait.to()),
        Map.of(oven.hold().temperature(), held)));
  }

  boolean isAWait() {
    return stage == bake.stages().size();
  }

  boolean isFollowedBy(OvenUse next) {
    return bake.equals(next.bake) && next.stage == stage + 1;
  }
}
