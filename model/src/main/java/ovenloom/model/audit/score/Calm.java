package ovenloom.model.audit.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Course;
import ovenloom.model.plan.Placement;

/** Little work in the last hour before a course, a hand free in the last two, and not too much on the day. */
final class Calm {

  private static final Stretches THE_DAY = Stretches.of(new Stretch(0, 1440));
  static final int LAST = 60;
  static final int BEFORE = 120;
  private static final int POINTS_A_MINUTE_WITH_NO_HAND_FREE = 2;
  private static final int MINUTES_OF_THE_DAY_A_POINT = 20;

  private Calm() {}

  static long points(Ledger plan) {
    Busy busy = Busy.in(plan);
    return busy.cookMinutes(beforeCourses(plan, LAST)) + noHandFreePoints(plan, busy)
        + ofTheDay(busy);
  }

  /** Work of the last hour by step; and what nobody in particular is to blame for, in words. */
  static Map<String, Long> shares(Ledger plan) {
    Busy busy = Busy.in(plan);
    Map<String, Long> shares = Shares.byStep(plan, run -> lastMinutes(plan, run));
    shares.put("no hand free", noHandFreePoints(plan, busy));
    shares.put("work on the day", ofTheDay(busy));
    long others = points(plan) - Shares.sum(shares);
    shares.put("washing up and taking out", Math.max(0, others));
    return shares;
  }

  /** Minutes of all cooks that a run takes in the hour before a course, but for serving. */
  static long lastMinutes(Ledger plan, Placement run) {
    BatchStep step = plan.stepOf(run);
    Stretches last = beforeCourses(plan, LAST);
    return step != null && step.step().serve() ? 0
        : run.hands()
            .stream()
            .mapToLong(
                hands -> Set.copyOf(hands.cooks()).size() * Stretches.of(hands.when()).shared(last).minutes())
            .sum();
  }

  private static long noHandFreePoints(Ledger plan, Busy busy) {
    return POINTS_A_MINUTE_WITH_NO_HAND_FREE
        * noHandFree(plan, busy).shared(beforeCourses(plan, BEFORE)).minutes();
  }

  private static long ofTheDay(Busy busy) {
    return busy.cookMinutes(THE_DAY) / MINUTES_OF_THE_DAY_A_POINT;
  }

  /** So many minutes before each course that has a dish. */
  static Stretches beforeCourses(Ledger plan, int minutes) {
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
