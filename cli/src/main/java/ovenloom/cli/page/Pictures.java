package ovenloom.cli.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.cli.lane.Box;
import ovenloom.cli.lane.Lane;
import ovenloom.cli.lane.Lanes;
import ovenloom.cli.page.Picture.Scale;
import ovenloom.cli.sheet.Clock;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.Course;
import ovenloom.model.plan.Plan;

/** The whole time in pictures: the last hours large, and each day on which somebody works or something is on. */
final class Pictures {

  private static final int HALF_AN_HOUR = 30;

  /** How long before the first course the last hours begin, minutes. */
  private static final int LAST = 150;

  private final Plan plan;
  private final Clock clock;
  private final List<Lane> lanes;

  Pictures(Plan plan) {
    this.plan = plan;
    clock = new Clock(plan.event().calendar());
    lanes = Lanes.of(plan);
  }

  static List<Picture> of(Plan plan) {
    Pictures pictures = new Pictures(plan);
    List<Picture> all = new ArrayList<>();
    all.add(pictures.lastHours());
    pictures.days()
        .forEach((day, when) -> all.add(
            Picture.of(plan, pictures.lanes, when, "day-" + day, pictures.clock.heading(day), Scale.SMALL)));
    return all;
  }

  private Picture lastHours() {
    return Picture.of(plan, lanes, last(), "last-hours", "The last hours", Scale.LARGE).opensAt(first());
  }

  List<Lane> lanes() {
    return lanes;
  }

  /** The last hours. */
  Stretch last() {
    int end = plan.event()
        .courses()
        .stream()
        .mapToInt(course -> course.at() + course.servedOver())
        .max()
        .orElse(first());
    return halfHours(first() - LAST, end);
  }

  /** The minute of the first course. */
  private int first() {
    return plan.event().courses().stream().mapToInt(Course::at).min().orElse(0);
  }

  /** From the first half hour in which something is done or on to the last, day by day. */
  Map<LocalDate, Stretch> days() {
    Map<LocalDate, Stretch> days = new TreeMap<>();
    for (Lane lane : lanes) {
      lane.boxes().stream().map(box -> busy(lane, box)).forEach(when -> add(when, days));
    }
    plan.ovens().forEach(log -> log.spans().forEach(span -> add(span.when(), days)));
    return days;
  }

  /** What of it keeps somebody busy or something on; of what is put on a shelf and left there, the minute it is put there. */
  private static Stretch busy(Lane lane, Box box) {
    int from = box.when().from();
    return switch (lane.kind()) {
      case OVEN, BURNER -> box.when();
      case COOK -> box.use() == Box.Use.BREAK ? new Stretch(from, from) : box.when();
      case SHELF -> new Stretch(from, goesOn(lane, box) ? from : from + 1);
      case VESSEL -> new Stretch(from, from);
    };
  }

  /** Whether the same food was there before. */
  private static boolean goesOn(Lane lane, Box box) {
    return lane.boxes()
        .stream()
        .anyMatch(other -> other.when().to() == box.when().from() && other.dish().equals(box.dish())
            && (other.batches().holds(box.batches()) || box.batches().holds(other.batches())));
  }

  /** What goes on past midnight is seen on both days. */
  private void add(Stretch work, Map<LocalDate, Stretch> days) {
    for (int from = work.from(); from < work.to();) {
      LocalDate day = clock.day(from);
      int midnight = plan.event().calendar().minuteOf(day.plusDays(1).atStartOfDay());
      int to = Math.min(midnight, work.to());
      Stretch part = halfHours(from, to);
      days.merge(day, new Stretch(part.from(), Math.min(midnight, part.to())), (one, other) -> new Stretch(
          Math.min(one.from(), other.from()), Math.max(one.to(), other.to())));
      from = to;
    }
  }

  /** Out to full and half hours of the clock on the wall. */
  private Stretch halfHours(int from, int to) {
    int before = plan.event().calendar().at(from).getMinute() % HALF_AN_HOUR;
    int after = (HALF_AN_HOUR - plan.event().calendar().at(to).getMinute() % HALF_AN_HOUR) % HALF_AN_HOUR;
    return new Stretch(from - before, to + after);
  }
}
