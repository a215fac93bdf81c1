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

  /** Of a step that is booked for so many minutes. */
  static List<HandsNeed> of(Step step, int written, int minutes) {
    List<HandsNeed> work = new ArrayList<>();
    for (Need.Hands hands : step.hands()) {
      work.add(need(hands, written, minutes));
    }
    Need.Bake bake = step.bake();
    if (bake == null) {
      return work;
    }
    HandsNeed load = new HandsNeed(Act.LOAD, 0, bake.load(), 0, 1, null);
    HandsNeed unload = new HandsNeed(Act.UNLOAD, -bake.unload(), bake.unload(), 0, 1, null);
    work.replaceAll(each -> steady(steady(each, load, minutes), unload, minutes));
    List<HandsNeed> all = new ArrayList<>();
    if (work.stream().noneMatch(each -> covers(each, load, minutes, 0))) {
      all.add(load);
    }
    all.addAll(work);
    if (work.stream().noneMatch(each -> covers(each, unload, minutes, 0))) {
      all.add(unload);
    }
    return all;
  }

  private static HandsNeed need(Need.Hands hands, int written, int booked) {
    return switch (hands.moment()) {
      case Moment.Throughout() -> work(hands, 0, HandsNeed.TO_THE_END, 0);
      case Moment.First(int minutes) -> work(hands, 0, minutes, 0);
      case Moment.Last(int minutes) -> work(hands, -minutes, minutes, 0);
      case Moment.At(int after, int minutes, boolean sharp) ->
        work(hands, scaled(after, written, booked), minutes,
            sharp ? 0 : SLIP);
    };
  }

  /** Half a minute rounds up. */
  private static int scaled(int after, int written, int booked) {
    return booked == written ? after : (2 * after * booked + written) / (2 * written);
  }

  private static HandsNeed work(Need.Hands hands, int from, int minutes, int slip) {
    return new HandsNeed(Act.WORK, from, minutes, slip, hands.cooks(), hands.skill());
  }

  /** The same, but that no slip decides whether whoever is at it sees to the door too. */
  private static HandsNeed steady(HandsNeed work, HandsNeed door, int minutes) {
    boolean covers = covers(work, door, minutes, 0);
    int slip = 0;
    while (slip < work.slip() && covers(work, door, minutes, slip + 1) == covers
        && covers(work, door, minutes, -slip - 1) == covers) {
      slip++;
    }
    return new HandsNeed(work.act(), work.from(), work.minutes(), slip, work.cooks(), work.skill());
  }

  /** Whoever is at it anyway sees to the door too. */
  private static boolean covers(HandsNeed work, HandsNeed door, int minutes, int slip) {
    int from = work.offset(minutes) + slip;
    int to = from + work.lasting(minutes);
    int opens = door.offset(minutes);
    return from <= opens && opens + door.minutes() <= to;
  }
}
