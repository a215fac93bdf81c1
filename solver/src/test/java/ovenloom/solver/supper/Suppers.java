package ovenloom.solver.supper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import ovenloom.model.file.ProblemFile;
import ovenloom.model.file.Reading;
import ovenloom.model.menu.Event;
import ovenloom.solver.search.Budget;
import ovenloom.solver.search.Found;
import ovenloom.solver.search.Search;

/** Suppers as a cook would write them, and what a short search makes of them. */
public final class Suppers {

  private static final Budget A_SHORT_SEARCH = new Budget(null, 1_000L, 1, 1);

  private Suppers() {}

  /** A supper at 19:00 with one still oven in Fahrenheit, and whatever dishes are given, two blanks deep. */
  public static Event withDishes(Path folder, String dishes) throws IOException {
    return read(folder, """
        ovenloom: 1
        event: Supper
        guests: 4
        courses: [{name: supper, at: 2026-11-20 19:00}]
        kitchen:
          ovens:
            - {name: oven, dial: 150 F to 500 F, racks: {count: 2, size: 55 x 38 cm, clear: 15 cm}}
          burners: [large, small]
          cold: [{name: fridge, holds: 4 C, shelves: [{name: shelf, size: 60 x 40 x 30 cm}]}]
          vessels: {half sheet: 2, 9x13 in dish: 2, mixing bowl: 2}
        cooks:
          - name: Cook
            hours: {day before: 17:00-21:00, on the day: 12:00-20:00}
        dishes:
        """ + dishes);
  }

  /** A problem file's text as an event; mistakes in it fail the test. */
  public static Event read(Path folder, String text) throws IOException {
    Path file = Files.writeString(folder.resolve("supper.yaml"), text);
    return switch (ProblemFile.read(file, folder, null)) {
      case Reading.Understood<Event>(var event, var sources, var notes) -> event;
      case Reading.Mistaken<Event>(var mistakes) -> throw new AssertionError(mistakes.toString());
    };
  }

  /** What a short search finds, the same each time. */
  public static Found planned(Event event) {
    return Search.find(event, List.of(), A_SHORT_SEARCH, (best, schedules, left) -> {}, () -> false);
  }
}
