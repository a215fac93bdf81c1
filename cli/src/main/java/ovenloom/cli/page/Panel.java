package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.lane.Box;
import ovenloom.cli.lane.Lane;
import ovenloom.cli.sheet.Clock;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/**
 * The kitchen over one stretch of time, on lanes: those on which anything is.
 *
 * @param minutePixels how wide a minute is
 */
public record Panel(Window window, List<Drawn> lanes, double minutePixels) {

  /** Pixels. */
  private static final int WORD = 28;

  public Panel {
    lanes = List.copyOf(lanes);
  }

  static Panel of(Plan plan, List<Lane> all, Stretch when, double minutePixels) {
    List<Drawn> drawn = new ArrayList<>();
    for (Lane lane : all) {
      List<Box> boxes = lane.boxes().stream().filter(box -> box.when().overlaps(when)).toList();
      Dial dial = lane.kind() == Lane.Kind.OVEN ? Dial.of(plan, lane.name(), when) : Dial.none();
      if (!boxes.isEmpty() || !dial.isEmpty()) {
        drawn.add(new Drawn(plan.event(), lane, label(plan, lane), boxes, dial));
      }
    }
    return new Panel(new Window(when, new Clock(plan.event().calendar())), drawn, minutePixels);
  }

  private static String label(Plan plan, Lane lane) {
    boolean isPart = lane.kind() == Lane.Kind.SHELF
        && plan.event()
            .kitchen()
            .stores()
            .stream()
            .anyMatch(
                store -> store.name().equals(lane.place()) && store.shelves().size() > 1);
    return isPart ? lane.place() + ", " + lane.name() : lane.place();
  }

  /** Whether a word can be read in a box on a screen. */
  public boolean hasRoom(Box box) {
    Stretch seen = window.when().shared(box.when());
    return seen != null && seen.minutes() * minutePixels >= WORD;
  }
}
