package ovenloom.model.audit.score;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.Course;

/** Little work in the last hour before a course, a hand free in the last two, and not too much on the day. */
final class Calm {

  private static final Stretches THE_DAY = Stretches.of(new Stretch(0, 1440));
  private static final int LAST = 60;
  private static final int BEFORE = 120;
  private static final int POINTS_A_MINUTE_WITH_NO_HAND_FREE = 2;
  private static final int MINUTES_OF_THE_DAY_A_POINT = 20;

  private Calm() {}

  static long points(Ledger plan) {
    Busy busy = Busy.in(plan);
    return busy.cookMinutes(beforeCourses(plan, LAST))
        + POINTS_A_MINUTE_WITH_NO_HAND_FREE
            * noHandFree(plan, busy).shared(beforeCourses(plan, BEFORE)).minutes()
        + busy.cookMinutes(THE_DAY) / MINUTES_OF_THE_DAY_A_POINT;
  }

  private static Stretches beforeCourses(Ledger plan, int minutes) {
    List<Stretch> windows = new ArrayList<>();
    for (Course course : plan.event().courses()) {
      if (plan.event().dishes().stream().anyMatch(dish -> dish.course().equals(course.name()))) {
        windows.add(new Stretch(course.at() - minutes, course.at()));
      }
    }
    return new Stretches(windows);
  }

  /** When somebody is at work and everybody who is has their hands full. */
  private static Stretches noHandFree(Ledger plan, Busy busy) {
    List<Stretches> atWork = new ArrayList<>();
    List<Stretches> free = new ArrayList<>();
    for (Cook cook : plan.event().cooks()) {
      Stretches hours = new Stretches(cook.hours()).without(new Stretches(cook.breaks()));
      atWork.add(hours);
      free.add(hours.without(busy.of(cook.name())));
    }
    return Stretches.any(atWork).without(Stretches.any(free));
  }
}
