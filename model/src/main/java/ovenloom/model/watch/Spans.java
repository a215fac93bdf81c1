package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Track;
import ovenloom.model.measure.Stretch;

/** What lies between the cooking of one way of food. */
final class Spans {

  private static final String MACHINE = "machine";

  private Spans() {}

  /** Whether a leg is a step on an oven or a burner, or in a machine that makes its food hot. */
  static boolean cooks(Leg leg) {
    return !leg.waits() && (leg.step().step().cooks() || isInAMachine(leg));
  }

  /** What a machine makes hot is said to be in it; what one only stirs stands on the counter. */
  private static boolean isInAMachine(Leg leg) {
    return leg.store() == null && leg.where().equals(MACHINE);
  }

  /** From the end of each cooking step to the next, or to the end. */
  static List<Stretch> afterCooking(Track track) {
    List<Stretch> all = new ArrayList<>();
    int since = Integer.MIN_VALUE;
    for (Leg leg : track.legs()) {
      if (cooks(leg)) {
        if (since != Integer.MIN_VALUE && since < leg.when().from()) {
          all.add(new Stretch(since, leg.when().from()));
        }
        since = leg.when().to();
      }
    }
    if (since != Integer.MIN_VALUE && since < track.to()) {
      all.add(new Stretch(since, track.to()));
    }
    return all;
  }
}
