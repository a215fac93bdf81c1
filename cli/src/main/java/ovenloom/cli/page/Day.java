package ovenloom.cli.page;

import java.util.List;
import ovenloom.cli.sheet.Act;

/** A day of the run sheet. */
public record Day(String heading, List<Ticked> lines) {

  public Day {
    lines = List.copyOf(lines);
  }

  /** The same, with one cook's lines, and those that are nobody's: all sit down, and what goes to the table then. */
  public Day of(String cook) {
    return new Day(heading, lines.stream().filter(line -> isFor(cook, line.act())).toList());
  }

  private static boolean isFor(String cook, Act act) {
    return act.cooks().isEmpty() || act.cooks().contains(cook);
  }
}
