package ovenloom.cli.sheet;

import java.util.List;
import java.util.Locale;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;

/** The moments everyone sits down. */
record TableActs(Event event) {

  List<Act> acts() {
    return event.courses().stream().filter(this::hasADish).map(this::act).toList();
  }

  /** Whether something for a course is made here, more than chores done for it. */
  boolean hasADish(Course course) {
    return event.dishes().stream().anyMatch(dish -> dish.food() && dish.course().equals(course.name()));
  }

  private Act act(Course course) {
    String over = course.servedOver() == 0 ? ""
        : " Served until " + new Clock(event.calendar()).time(course.at() + course.servedOver(), course.at())
            + ".";
    return new Act(course.at(), Turn.TABLE, List.of(), course.name().toUpperCase(Locale.ROOT),
        "AT THE TABLE." + over);
  }
}
