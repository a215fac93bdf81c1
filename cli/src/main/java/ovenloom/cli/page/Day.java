package ovenloom.cli.page;

import java.util.List;
import java.util.Set;
import ovenloom.cli.sheet.Act;

/** A day of the run sheet. */
public record Day(String heading, List<Ticked> lines) {

  public Day {
    lines = List.copyOf(lines);
  }

  /** The same, with the lines of some acts only. */
  public Day of(Set<Act> acts) {
    return new Day(heading, lines.stream().filter(line -> acts.contains(line.act())).toList());
  }
}
