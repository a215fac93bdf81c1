package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.HandsOn.Act;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/**
 * Hands that a run or a stay takes.
 *
 * @param when where they are expected
 * @param slip minutes either way by which they may be elsewhere
 * @param within where they may be at all
 * @param cooks how many
 */
record HandsNeeded(Act act, Stretch when, int slip, Stretch within, int cooks, @Nullable String skill) {

  /** Minutes either way that a moment which is not sharp may slip. Common practice. */
  private static final int SLIP = 3;

  /**
   * By a run: loading, what its step asks for, unloading. Whoever is at work over a loading or unloading does it by the
   * way, and what stays in its oven is not unloaded yet.
   */
  static List<HandsNeeded> by(Case plan, Placement run) {
    List<BatchStep> steps = plan.steps(run);
    BatchStep first = steps.getFirst();
    Need.Bake bake = first.step().bake();
    Stretch when = run.when();
    List<HandsNeeded> all = new ArrayList<>();
    if (bake != null) {
      door(run, Act.LOAD, new Stretch(when.from(), when.from() + bake.load()), all);
    }
    for (Need.Hands need : first.step().hands()) {
      all.add(work(need, when, first.minutes()));
    }
    if (bake != null && !steps.stream().allMatch(step -> waitsInItsOven(plan.stay(step)))) {
      door(run, Act.UNLOAD, new Stretch(when.to() - bake.unload(), when.to()), all);
    }
    return all;
  }

  /** By a stay: unloading the oven it is in, in its last minutes. */
  static List<HandsNeeded> by(Case plan, Stay stay) {
    Need.Bake bake = plan.steps(stay).getFirst().step().bake();
    if (bake == null || !waitsInItsOven(stay)) {
      return List.of();
    }
    int end = stay.parts().getLast().when().to();
    return List.of(atTheDoor(Act.UNLOAD, new Stretch(end - bake.unload(), end)));
  }

  private static boolean waitsInItsOven(@Nullable Stay stay) {
    return stay != null && !stay.parts().isEmpty() && stay.parts().getLast().where() instanceof Where.InOven;
  }

  private static void door(Placement run, Act act, Stretch when, List<HandsNeeded> all) {
    boolean somebodyIsThere = run.hands()
        .stream()
        .anyMatch(each -> each.act() == Act.WORK && each.when().encloses(when));
    if (!somebodyIsThere) {
      all.add(atTheDoor(act, when));
    }
  }

  private static HandsNeeded atTheDoor(Act act, Stretch when) {
    return new HandsNeeded(act, when, 0, when, 1, null);
  }

  private static HandsNeeded work(Need.Hands need, Stretch run, int written) {
    int from = run.from();
    int to = run.to();
    return switch (need.moment()) {
      case Need.Moment.Throughout() -> work(need, run, run, 0);
      case Need.Moment.First(int minutes) -> work(need, run, new Stretch(from, from + minutes), 0);
      case Need.Moment.Last(int minutes) -> work(need, run, new Stretch(to - minutes, to), 0);
      case Need.Moment.At(int after, int minutes, boolean sharp) -> {
        int start = from + scaled(after, run.minutes(), written);
        yield work(need, run, new Stretch(start, start + minutes), sharp ? 0 : SLIP);
      }
    };
  }

  private static HandsNeeded work(Need.Hands need, Stretch run, Stretch when, int slip) {
    return new HandsNeeded(Act.WORK, when, slip, run, need.cooks(), need.skill());
  }

  /** Half a minute rounds up. */
  private static int scaled(int after, int booked, int written) {
    return written == 0 ? after : Math.toIntExact(Math.floorDiv(2L * after * booked + written, 2L * written));
  }

  /** Minutes by which hands are too early, too late, too short, too long, or outside; 0 where they are as needed. */
  int off(HandsOn hands) {
    int moved = Math.abs(hands.when().from() - when.from());
    int off = Math.max(0, moved - slip) + Math.abs(hands.when().minutes() - when.minutes());
    int outside = Math.max(within.from() - hands.when().from(), hands.when().to() - within.to());
    return Math.max(off, outside);
  }
}
