package ovenloom.cli.compare;

import java.util.List;

/** A figure of all that are compared, side by side. */
public record Row(String label, List<String> cells) {
  public Row {
    cells = List.copyOf(cells);
  }
}
