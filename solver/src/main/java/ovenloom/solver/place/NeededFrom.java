package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;

/** The minutes that one way to bake needs, by how warm the food goes in; each worked out when first asked for. */
public final class NeededFrom {

  /** C; food is neither colder nor warmer than this. */
  private static final int COLDEST = -40;
  private static final int WARMEST = 120;

  private final BakeMinutes minutes;
  private final BatchStep step;
  private final Oven oven;
  private final String mode;
  private final List<Setting> marks;
  private final int[] known = new int[WARMEST - COLDEST + 1];

  NeededFrom(BakeMinutes minutes, BatchStep step, Oven oven, String mode, List<Setting> marks) {
    this.minutes = minutes;
    this.step = step;
    this.oven = oven;
    this.mode = mode;
    this.marks = List.copyOf(marks);
  }

  int of(double celsius) {
    int whole = Math.clamp(BakeMinutes.wholeDegrees(celsius), COLDEST, WARMEST);
    int found = known[whole - COLDEST];
    if (found == 0) {
      found = minutes.needed(step, oven, mode, marks, whole);
      known[whole - COLDEST] = found;
    }
    return found;
  }
}
