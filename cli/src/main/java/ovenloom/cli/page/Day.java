package ovenloom.cli.page;

import java.util.List;

/** A day of the run sheet. */
public record Day(String heading, List<Ticked> lines) {

  public Day {
    lines = List.copyOf(lines);
  }

  /** The same, with the lines of one cook only. */
  public Day of(String cook) {
    return new Day(heading, lines.stream().filter(line -> line.whose().contains(cook)).toList());
  }
}
