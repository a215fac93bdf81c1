package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.menu.Need;

/** A bake does not contradict itself: its stages fit into it, and its door is not opened while it is shut. */
final class BakeInItself implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of();
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    scene.steps().forEach(of -> {
      Need.Bake bake = of.step().bake();
      if (bake != null) {
        stages(of, bake, found);
        door(of, bake, found);
      }
    });
    return found;
  }

  private static void stages(Scene.Of of, Need.Bake bake, List<Finding> found) {
    int minutes = 0;
    for (Need.Stage stage : bake.stages()) {
      Integer own = stage.minutes();
      minutes += own == null ? 0 : own;
    }
    if (minutes >= of.minutes()) {
      found.add(Finding.fatal(of.subject().key("bake"), new Trouble.StagesTooLong(minutes, of.minutes())));
    }
  }

  /** Moments may slip a little, so only those are told that cannot slip out of it. */
  private static void door(Scene.Of of, Need.Bake bake, List<Finding> found) {
    long until = Math.min((long) bake.load() + bake.doorShut(), (long) of.minutes() - bake.unload());
    for (Need.Hands hands : of.step().hands()) {
      if (hands.moment() instanceof Need.Moment.At(int after, int minutes, boolean sharp)) {
        int slip = sharp ? 0 : 3;
        boolean before = after - slip + minutes <= bake.load();
        if (bake.doorShut() > 0 && !before && after + slip < until) {
          found.add(Finding.fatal(of.subject().key("door shut"), new Trouble.DoorShut(after, (int) until)));
        }
      }
    }
  }
}
