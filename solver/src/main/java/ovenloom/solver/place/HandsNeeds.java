package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Need.Moment;
import ovenloom.model.menu.Step;
import ovenloom.model.plan.HandsOn.Act;

/** Reads a step's hands: loading, what it states, unloading. */
final class HandsNeeds {

  /** Minutes that a moment in the middle may slip. */
  private static final int SLIP = 3;

  private HandsNeeds() {}

  static List<HandsNeed> of(Step step, int minutes) {
    List<HandsNeed> work = new ArrayList<>();
    for (Need.Hands hands : step.hands()) {
      work.add(need(hands));
    }
    Need.Bake bake = step.bake();
    if (bake == null) {
      return work;
    }
    List<HandsNeed> all = new ArrayList<>();
    HandsNeed load = new HandsNeed(Act.LOAD, 0, bake.load(), 0, 1, null);
    HandsNeed unload = new HandsNeed(Act.UNLOAD, -bake.unload(), bake.unload(), 0, 1, null);
    if (work.stream().noneMatch(each -> covers(each, load, minutes))) {
      all.add(load);
    }
    all.addAll(work);
    if (work.stream().noneMatch(each -> covers(each, unload, minutes))) {
      all.add(unload);
    }
    return all;
  }

  private static HandsNeed need(Need.Hands hands) {
    return switch (hands.moment()) {
      case Moment.Throughout() -> work(hands, 0, HandsNeed.TO_THE_END, 0);
      case Moment.First(int minutes) -> work(hands, 0, minutes, 0);
      case Moment.Last(int minutes) -> work(hands, -minutes, minutes, 0);
      case Moment.At(int after, int minutes, boolean sharp) -> work(hands, after, minutes, sharp ? 0 : SLIP);
    };
  }

  private static HandsNeed work(Need.Hands hands, int from, int minutes, int slip) {
    return new HandsNeed(Act.WORK, from, minutes, slip, hands.cooks(), hands.skill());
  }

  /** Whoever is at it anyway sees to the door too. */
  private static boolean covers(HandsNeed work, HandsNeed door, int minutes) {
    int from = work.offset(minutes);
    int to = from + work.lasting(minutes);
    int opens = door.offset(minutes);
    return from <= opens && opens + door.minutes() <= to;
  }
}
