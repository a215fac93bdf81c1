package ovenloom.model.why;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;

/** A run with all that is its own, some minutes later or earlier. */
final class Shifted {

  private Shifted() {}

  static Placement by(Placement run, int minutes) {
    return new Placement(run.dish(), run.step(), run.batches(), run.when().shiftedBy(minutes),
        by(run.baking(), minutes), run.burners(), run.shelves(), by(run.hands(), minutes));
  }

  static List<HandsOn> by(List<HandsOn> hands, int minutes) {
    return hands.stream()
        .map(each -> new HandsOn(each.act(), each.when().shiftedBy(minutes), each.cooks()))
        .toList();
  }

  private static @Nullable Baking by(@Nullable Baking baking, int minutes) {
    if (baking == null) {
      return null;
    }
    List<Baking.StageRun> stages = baking.stages()
        .stream()
        .map(each -> new Baking.StageRun(each.mark(), each.when().shiftedBy(minutes)))
        .toList();
    return new Baking(baking.oven(), baking.mode(), stages, baking.racks(), baking.state());
  }
}
