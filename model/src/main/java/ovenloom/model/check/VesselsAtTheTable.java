package ovenloom.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;

/** What is at the table at one moment is in different vessels, since none can be washed in between. */
final class VesselsAtTheTable implements Check {

  private record Taken(Filling filling, BatchStep last, Stretch when) {}

  @Override
  public Set<Part> relyingOn() {
    return Set.of(Part.KITCHEN, Part.COURSES, Part.MENU);
  }

  @Override
  public List<Finding> findings(Scene scene) {
    List<Finding> found = new ArrayList<>();
    for (Vessel vessel : scene.event().kitchen().vessels()) {
      List<Taken> all = taken(scene, vessel);
      for (Taken each : all) {
        int wanted = all.stream()
            .filter(other -> other.when().contains(each.when().from()))
            .mapToInt(other -> other.filling().count())
            .sum();
        if (wanted > vessel.count() && found.stream()
            .noneMatch(before -> before.trouble()
                .equals(new Trouble.TooFewAtTheTable(vessel.name(), wanted, vessel.count())))) {
          found.add(Finding.fatal(Scene.subject(each.last()).key("in"),
              new Trouble.TooFewAtTheTable(vessel.name(), wanted, vessel.count())));
        }
      }
    }
    return found;
  }

  private static List<Taken> taken(Scene scene, Vessel vessel) {
    List<Taken> all = new ArrayList<>();
    for (Filling filling : scene.work().fillings()) {
      if (filling.toTheTable() && filling.vessel().equals(vessel.name()) && filling.count() <= vessel.count()
          && scene.isByItself(filling)) {
        BatchStep last = scene.work().steps().get(filling.steps().getLast());
        all.add(new Taken(filling, last, surely(scene.event(), last)));
      }
    }
    return all;
  }

  /** The minutes in which it is taken in any plan. */
  private static Stretch surely(Event event, BatchStep last) {
    Dish dish = last.dish();
    int end = event.endOfService(dish);
    int due = event.due(dish, last.batches().first());
    return last.step().serve() ? new Stretch(end - 1, end) : new Stretch(due - 1, Math.max(due, end));
  }
}
