package ovenloom.model.watch;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.Reach;
import ovenloom.model.life.RoastOvens;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.safety.Profile;

/** A whole roast may be baked at no mark of any oven that is hot enough for its weight. */
record NeverRoasted(RoastOvens roasts, Kitchen kitchen) implements Foregone {

  /**
   * A mode of an oven that will do.
   *
   * @param most in the coolest of the stages
   * @param least absent where nothing is asked of it
   */
  private record Way(Temperature most, Profile.@Nullable RoastOven least) {

    double off() {
      return least == null ? 0 : least.at().kelvinsAbove(most);
    }
  }

  @Override
  public List<Unavoidable> find(BatchStep step) {
    Need.Bake bake = step.step().bake();
    Way best = bake == null ? null
        : kitchen.ovens()
            .stream()
            .flatMap(oven -> ways(step, bake, oven))
            .min(Comparator.comparingDouble(Way::off))
            .orElse(null);
    return best == null ? List.of() : tooCool(step, best, best.least());
  }

  private static List<Unavoidable> tooCool(BatchStep step, Way best, Profile.@Nullable RoastOven least) {
    if (least == null || best.off() <= 0) {
      return List.of();
    }
    String what = Roasted.what("Roasted at " + Words.degrees(best.most()) + " at most", least);
    return List.of(new Unavoidable(step, List.of("bake"), best.off(), what, least.source(), Roasted.HELP));
  }

  private Stream<Way> ways(BatchStep step, Need.Bake bake, Oven oven) {
    return oven.modes().stream().map(mode -> {
      Temperature most = Reach.hottest(oven, mode, bake);
      return most == null ? null : new Way(most, roasts.least(step, mode));
    }).filter(Objects::nonNull);
  }
}
