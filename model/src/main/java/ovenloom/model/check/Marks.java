package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Need;

/** Some oven can be set to what a bake asks for, in all its stages. */
final class Marks implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    scene.steps().forEach(of -> {
      Need.Bake bake = of.step().bake();
      Trouble trouble = bake == null ? null : trouble(scene.event().kitchen().ovens(), bake);
      if (trouble != null) {
        found.add(Finding.fatal(of.subject().key("bake"), trouble));
      }
    });
    return found;
  }

  private static @Nullable Trouble trouble(List<Oven> ovens, Need.Bake bake) {
    if (ovens.isEmpty()) {
      return new Trouble.NoOven();
    }
    if (ovens.stream().anyMatch(oven -> canBake(oven, bake))) {
      return null;
    }
    for (Need.Stage stage : bake.stages()) {
      if (ovens.stream().noneMatch(oven -> hasAMark(oven, stage))) {
        return noMark(bake, stage, bake.stages().size() == 1 ? null : bake.stages().indexOf(stage) + 1);
      }
    }
    return noMark(bake, bake.stages().getFirst(), null);
  }

  private static Trouble noMark(Need.Bake bake, Need.Stage stage, @Nullable Integer number) {
    return new Trouble.NoMark(stage.from(), stage.to(), bake.stages().getFirst().mode(), number);
  }

  /** Whether one of its modes has a mark for each stage. */
  static boolean canBake(Oven oven, Need.Bake bake) {
    return oven.modes()
        .stream()
        .anyMatch(mode -> bake.stages().stream().allMatch(stage -> hasAMark(oven, stage, mode)));
  }

  private static boolean hasAMark(Oven oven, Need.Stage stage) {
    return oven.modes().stream().anyMatch(mode -> hasAMark(oven, stage, mode));
  }

  private static boolean hasAMark(Oven oven, Need.Stage stage, String mode) {
    Double shift = oven.converts(stage.mode(), mode);
    return shift != null && !oven.dial().within(at(stage.from(), shift), at(stage.to(), shift)).isEmpty();
  }

  private static Temperature at(Setting setting, double shift) {
    return setting.temperature().plusKelvins(shift);
  }
}
