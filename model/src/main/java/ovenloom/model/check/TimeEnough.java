package ovenloom.model.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Link;

/** Courses are inside the calendar, and steps one after the other have the time they take. */
final class TimeEnough implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.COURSES, Part.COOKS, Part.MENU);
  }

  /** Each dish once, at the first step that is too late. */
  @Override
  public List<Finding> findings(Scene scene) {
    Event event = scene.event();
    long[] starts = starts(scene);
    List<Finding> found = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (BatchStep step : scene.work().steps()) {
      long end = starts[step.index()] + step.minutes();
      int due = step.step().serve() ? event.endOfService(step.dish())
          : event.due(step.dish(), step.batches().first());
      if (end > due && told.add(step.dish().name())) {
        found.add(tooLate(event, step, end, due));
      }
    }
    return found;
  }

  private static Finding tooLate(Event event, BatchStep step, long end, int due) {
    Course course = event.courseOf(step.dish());
    return course.at() < event.from()
        ? Finding.fatal(Subject.course(course.name()).key("at"),
            new Trouble.BeforeTheCalendar(event.from() - course.at()))
        : Finding.fatal(Scene.subject(step).key("takes"),
            new Trouble.TooLateBeforeItBegins(minutes(end - event.from()),
                minutes((long) due - event.from())));
  }

  private static int minutes(long many) {
    return (int) Math.min(many, Integer.MAX_VALUE);
  }

  /** The earliest each step can begin, were there cooks and room without end. */
  private static long[] starts(Scene scene) {
    long[] starts = new long[scene.work().steps().size()];
    for (BatchStep step : scene.work().steps()) {
      long start = scene.event().from();
      for (BatchLink link : scene.work().into(step.index())) {
        long before = starts[link.from()];
        boolean alongside = link.link().kind() == Link.Kind.ALONGSIDE;
        int minutes = scene.work().steps().get(link.from()).minutes();
        start = Math.max(start, alongside ? before : before + minutes + link.link().least());
      }
      starts[step.index()] = start;
    }
    return starts;
  }
}
