package ovenloom.cli.sheet;

import java.util.List;
import java.util.Locale;
import ovenloom.cli.sheet.Act.Turn;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;

/** The moments everyone sits down. */
record TableActs(Event event) {

  List<Act> acts() {
    return event.courses().stream().map(this::act).toList();
  }

  private Act act(Course course) {
    String over = course.servedOver() == 0 ? ""
        : " Served until " + new Clock(event.calendar()).time(course.at() + course.servedOver(), course.at())
            + ".";
    return new Act(course.at(), Turn.TABLE, List.of(), course.name().toUpperCase(Locale.ROOT),
        "AT THE TABLE." + over);
  }
}
