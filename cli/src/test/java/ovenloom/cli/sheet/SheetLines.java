package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.plan.Plan;

/** A kitchen for suppers made by hand, and its run sheets as tests read them. */
public final class SheetLines {

  public static final String KITCHEN = """
      ovenloom: 1
      event: Supper
      guests: 8
      courses: [{name: supper, at: 2026-10-10 19:00, served over: 20 min}]
      kitchen:
        ovens:
          - name: oven
            dial: 60 C to 260 C
            heats: 180 C in 12 min
            cools: 200 C to 150 C in 15 min
            racks: {count: 2, size: 55 x 38 cm, clear: 15 cm}
        burners: [large, small]
        cold: [{name: fridge, holds: 4 C, shelves: [{name: top, size: 50 x 35 x 20 cm}, {name: low, size: 50 x 35 x 20 cm}]}]
        vessels: {dish: {count: 3, size: 30 x 20 x 6 cm}, tray: {count: 4, size: 25 x 20 x 3 cm}, pot: {count: 2, size: 20 x 20 x 15 cm}, platter: 1}
      """;

  public static final String HOST = """
      cooks: [{name: Host, hours: {2 days before: 9:00-23:00, day before: 9:00-23:00, on the day: 8:00-21:00}}]
      """;

  static final String TWO = """
      cooks:
        - {name: Mira, hours: {on the day: 8:00-21:00}}
        - {name: Jonas, hours: {on the day: 8:00-21:00}}
      """;

  private SheetLines() {}

  /** Lines of a wide sheet, each with its time, and a bar between columns. */
  static List<String> lines(Plan plan) {
    return lines(RunSheet.of(plan, 400, false));
  }

  static List<String> lines(String sheet) {
    List<String> lines = new ArrayList<>();
    String time = "";
    for (String line : sheet.lines().toList()) {
      time = line.matches("\\d\\d:\\d\\d .*") ? line.substring(0, 5) : time;
      lines.add((line.startsWith("       ") ? time + line.substring(5) : line).replaceAll(" {2,}", " | "));
    }
    return lines;
  }
}
