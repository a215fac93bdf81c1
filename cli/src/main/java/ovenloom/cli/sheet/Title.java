package ovenloom.cli.sheet;

import java.util.List;
import java.util.function.Predicate;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;

/** What an event is, for how many and when. */
public record Title(Event event) {

  public String name() {
    return event.name();
  }

  /** {@code 8 guests. Saturday 10 October 2026: supper at 19:00.} */
  public String sentence() {
    String day = new Clock(event.calendar()).date(0);
    List<String> bare = courses(Predicate.not(new TableActs(event)::hasADish));
    String nothing = bare.isEmpty() ? "" : " Nothing is made here for " + Words.and(bare) + ".";
    return event.guests() + " guests. " + day + ": "
        + String.join(", ", courses(new TableActs(event)::hasADish)) + "." + nothing;
  }

  private List<String> courses(Predicate<Course> which) {
    Clock clock = new Clock(event.calendar());
    return event.courses()
        .stream()
        .filter(which)
        .map(course -> course.name() + " at " + clock.time(course.at()))
        .toList();
  }
}
