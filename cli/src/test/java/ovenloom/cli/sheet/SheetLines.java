package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.plan.Plan;

/** A run sheet as tests read it. */
final class SheetLines {

  private SheetLines() {}

  /** Lines of a wide sheet, each with its time, and a bar between columns. */
  static List<String> lines(Plan plan) {
    List<String> lines = new ArrayList<>();
    String time = "";
    for (String line : RunSheet.of(plan, 400, false).lines().toList()) {
      time = line.matches("\\d\\d:\\d\\d .*") ? line.substring(0, 5) : time;
      lines.add((line.startsWith("       ") ? time + line.substring(5) : line).replaceAll(" {2,}", " | "));
    }
    return lines;
  }
}
