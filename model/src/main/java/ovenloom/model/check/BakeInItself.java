package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.menu.Need;

/** A bake does not contradict itself: its stages fit into it, and its door is not opened while it is shut. */
final class BakeInItself implements Check {

  /** Minutes either way by which a stage may be longer or shorter, and a moment that is not sharp elsewhere. */
  private static final int SLIP = 3;

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

  /** As written nothing is left for the last; it is no more than worth a note where stages that slip leave it a minute. */
  private static void stages(Scene.Of of, Need.Bake bake, List<Finding> found) {
    long written = 0;
    long least = 0;
    for (Need.Stage stage : bake.stages()) {
      Integer own = stage.minutes();
      written += own == null ? 0 : own;
      least += own == null ? 0 : Math.max(0, own - SLIP);
    }
    if (written >= of.mostMinutes()) {
      found.add(new Finding(of.subject().key("bake"),
          new Trouble.StagesTooLong((int) Math.min(written, Integer.MAX_VALUE), of.mostMinutes()),
          least >= of.mostMinutes()));
    }
  }

  /** Only those moments are told that cannot slip out of it, however long the bake is booked. */
  private static void door(Scene.Of of, Need.Bake bake, List<Finding> found) {
    for (Need.Hands hands : of.step().hands()) {
      if (bake.doorShut() > 0 && hands.moment() instanceof Need.Moment.At at
          && isShutAt(at, bake, of.minutes(), of.minutes())
          && isShutAt(at, bake, of.minutes(), of.mostMinutes())) {
        found.add(Finding.fatal(of.subject().key("door shut"),
            new Trouble.DoorShut(at.after(), (int) until(bake, of.minutes()))));
      }
    }
  }

  /** In a longer bake a moment comes later, by its share. */
  private static boolean isShutAt(Need.Moment.At at, Need.Bake bake, int written, int booked) {
    int slip = at.sharp() ? 0 : SLIP;
    long until = until(bake, booked);
    long after = Math.round((double) at.after() * booked / written);
    boolean before = after - slip + at.minutes() <= bake.load();
    return until > bake.load() && !before && after + slip < until;
  }

  private static long until(Need.Bake bake, int booked) {
    return Math.min((long) bake.load() + bake.doorShut(), (long) booked - bake.unload());
  }
}
