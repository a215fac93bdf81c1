package ovenloom.solver.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.plan.HandsOn.Act;

/** Runs and the hands they need, for tests. */
final class ARun {

  private ARun() {}

  /** A run of which only the hands count. */
  static Run aRun(int index, HandsNeed... hands) {
    return new Run(index, List.of(), 30, 30, MadeOn.ANY_DAY, 600, 600, List.of(), List.of(hands),
        new Footing(false, false, false, false, false), 0);
  }

  static HandsNeed work(int from, int minutes) {
    return work(from, minutes, 0, 1, null);
  }

  static HandsNeed work(int from, int minutes, int slip, int cooks, @Nullable String skill) {
    return new HandsNeed(Act.WORK, from, minutes, slip, cooks, skill);
  }

  static HandsNeed load(int minutes) {
    return new HandsNeed(Act.LOAD, 0, minutes, 0, 1, null);
  }

  static HandsNeed unload(int minutes) {
    return new HandsNeed(Act.UNLOAD, -minutes, minutes, 0, 1, null);
  }
}
