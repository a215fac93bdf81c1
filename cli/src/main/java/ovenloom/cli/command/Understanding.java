package ovenloom.cli.command;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ovenloom.cli.sheet.Harmless;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Dish;
import ovenloom.model.menu.Event;

/** What was understood of a problem, in a few lines. */
record Understanding(Event event) {

  private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy HH:mm",
      Locale.ENGLISH);

  String text(String file, int width) {
    int batches = event.dishes().stream().mapToInt(Dish::batches).sum();
    int steps = event.dishes().stream().mapToInt(dish -> dish.steps().size()).sum();
    String text = """
        %s is understood: %s, %s.
        Courses   %s
        Menu      %s in %s, %s
        Kitchen   %s
        Cooks     %s
        """.formatted(file, event.name(), count(event.guests(), "guest"), courses(),
        count(event.dishes().size(), "dish"), count(batches, "batch"), count(steps, "step"), kitchen(),
        cooks());
    return Harmless.text(text);
  }

  private String courses() {
    return event.courses().stream().map(this::course).collect(Collectors.joining("\n          "));
  }

  private String course(Course course) {
    return course.name() + ", " + WHEN.format(event.calendar().at(course.at()));
  }

  private String kitchen() {
    Kitchen kitchen = event.kitchen();
    return List.of(
        count(kitchen.ovens().size(), "oven"),
        count(kitchen.burners().size(), "burner"),
        count(kitchen.stores().size(), "cold or hot place"),
        count(kitchen.vessels().size(), "kind of vessel"),
        count(kitchen.appliances().size(), "kind of appliance"))
        .stream()
        .collect(Collectors.joining(", "));
  }

  private String cooks() {
    return event.cooks()
        .stream()
        .map(cook -> cook.name() + " (from "
            + WHEN.format(event.calendar().at(cook.hours().getFirst().from())) + ")")
        .collect(Collectors.joining("\n          "));
  }

  private static String count(int count, String one) {
    if (count == 1) {
      return "1 " + one;
    }
    if (one.startsWith("kind ")) {
      return count + " kinds" + one.substring(4);
    }
    return count + " " + one + (one.endsWith("sh") || one.endsWith("ch") ? "es" : "s");
  }
}
