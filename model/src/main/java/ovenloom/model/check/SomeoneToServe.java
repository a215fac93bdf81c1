package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Step;

/** When food goes to the table someone is in hours; the minute in which hours end counts. */
final class SomeoneToServe implements Check {

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.COOKS, Part.COURSES, Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    for (Dish dish : scene.event().dishes()) {
      boolean carried = dish.food() && dish.steps().stream().noneMatch(Step::serve);
      for (int batch = 1; carried && batch <= dish.batches(); batch++) {
        if (!isSomeoneThere(scene.event(), scene.event().due(dish, batch))) {
          found.add(
              Finding.fatal(Subject.course(dish.course()).key("at"), new Trouble.NobodyToServe(dish.name())));
          return found;
        }
      }
    }
    return found;
  }

  private static boolean isSomeoneThere(Event event, int due) {
    return event.cooks()
        .stream()
        .flatMap(cook -> cook.hours().stream())
        .anyMatch(hours -> hours.from() <= due && due <= hours.to());
  }
}
