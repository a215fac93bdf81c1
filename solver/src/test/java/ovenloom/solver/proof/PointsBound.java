package ovenloom.solver.proof;

import ovenloom.model.menu.Event;
import ovenloom.solver.place.Extents;

/** How many points a plan has at least, at the table and by wishes, one for one. */
public final class PointsBound {

  private PointsBound() {}

  /** The least that any plan loses at the table, and the least that any, however much it loses there, costs by wishes. */
  public static long of(Event event) {
    Bounds bounds = new Bounds(Extents.of(event));
    long atTheTable = bounds.atTheTable(new Solving(Proof.AT_THE_TABLE));
    return atTheTable + bounds.wishes(Integer.MAX_VALUE, new Solving(Proof.WISHES));
  }
}
