package ovenloom.cli.page;

import java.util.ArrayList;
import java.util.List;
import ovenloom.cli.lane.Lane;
import ovenloom.cli.sheet.Clock;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.Plan;

/**
 * The kitchen over one stretch of time, on lanes: those on which anything is.
 *
 * @param ticks of the ruler above them
 */
public record Panel(Window window, List<Window.Tick> ticks, List<Drawn> lanes) {

  public Panel {
    ticks = List.copyOf(ticks);
    lanes = List.copyOf(lanes);
  }

  /** A page holds so much from top to bottom, in pixels: Letter, which is the shorter of two papers, less a heading. */
  private static final int PAGE = 900;

  /** Whether it has room on one page, and so is not to be on two. */
  public boolean isOnOnePage() {
    return lanes.stream().mapToInt(Drawn::height).sum() < PAGE;
  }

  static Panel of(Plan plan, List<Lane> all, Stretch when, double minutePixels) {
    Window window = new Window(when, new Clock(plan.event().calendar()));
    Lettering lettering = new Lettering(window, minutePixels);
    List<Drawn> drawn = new ArrayList<>();
    for (Lane lane : all) {
      Drawn each = Drawn.of(plan, lane, lettering);
      if (!each.boxes().isEmpty() || !each.curve().isEmpty()) {
        drawn.add(each);
      }
    }
    return new Panel(window, window.ticks(), drawn);
  }
}
