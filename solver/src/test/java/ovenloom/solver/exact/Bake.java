package ovenloom.solver.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.Starts;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;

/**
 * A bake, and all ways to bake it.
 *
 * @param stages when each stage runs
 * @param out when its food leaves the oven: at its end, or when it has waited there
 * @param inside from its load until then
 * @param afterwards where its food waits
 */
record Bake(Cp cp, BatchStep step, Need.Bake need, List<Way> ways, List<Span> stages, LinearArgument out,
    Span inside,
    @Nullable Wait afterwards) {

  /**
   * One way to bake it.
   *
   * @param marks one a stage
   * @param start how cold its minutes take the food to be
   * @param tenths of a kelvin off what is written, over all stages
   * @param minutes that it takes so
   */
  record Way(Oven oven, String mode, List<Setting> marks, Starts.Start start, long tenths, int minutes,
      BoolVar taken) {}

  Literal in(Oven oven) {
    return any(way -> way.oven().equals(oven));
  }

  Literal in(Oven oven, String mode) {
    return any(way -> way.oven().equals(oven) && way.mode().equals(mode));
  }

  Literal at(Oven oven, int stage, Temperature mark) {
    return any(way -> way.oven().equals(oven) && way.marks().get(stage).temperature().equals(mark));
  }

  boolean canBeIn(Oven oven) {
    return ways.stream().anyMatch(way -> way.oven().equals(oven));
  }

  private Literal any(Predicate<Way> which) {
    return cp.any(ways.stream().filter(which).<Literal>map(Way::taken).toList());
  }
}
