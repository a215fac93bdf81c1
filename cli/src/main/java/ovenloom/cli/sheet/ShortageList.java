package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.solver.place.Scarce;
import ovenloom.solver.search.Found;

/** What seems short where no plan is found, the worst first. */
public final class ShortageList {

  /** Steps that are named; the rest are counted. */
  private static final int NAMED = 3;

  private ShortageList() {}

  /**
   * One line or two for each need; nothing where none is known.
   *
   * @param width of a line, in characters
   */
  public static String of(List<Found.Shortage> shortages, int width) {
    Page page = new Page(width, false);
    for (Found.Shortage shortage : shortages) {
      String line = words(shortage.what()) + ", for " + steps(shortage.steps()) + ".";
      page.row(List.of(new Line.Cell("Seems short:", 12, false), new Line.Cell(line, 0, false)));
    }
    return page.toString();
  }

  private static String steps(List<String> steps) {
    String named = String.join(", ", steps.subList(0, Math.min(NAMED, steps.size())));
    int more = steps.size() - NAMED;
    return more > 0 ? named + " and " + more + " more" : named;
  }

  private static String words(Scarce what) {
    return switch (what) {
      case HOURS -> "somebody to be there";
      case HANDS -> "hands";
      case WORKTOP -> "room on the worktop";
      case APPLIANCES -> "the appliance";
      case BURNERS -> "a burner";
      case SHELVES -> "room on the shelves";
      case VESSELS -> "clean vessels";
      case OVENS -> "an oven at the mark";
      case RACKS -> "room on the oven's racks";
    };
  }
}
