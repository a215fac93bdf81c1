package ovenloom.solver.timeline;

import java.util.List;

/** Where each vessel stands on a rack or shelf, in the order in which they were given. */
public record Layout(List<Spot> spots) {

  public Layout {
    spots = List.copyOf(spots);
  }

  /**
   * Where one stands: its near left corner, in micrometres from the surface's near left corner.
   * Its longer side runs from left to right, or from near to far if it is turned.
   */
  public record Spot(int x, int y, boolean turned) {}
}
