package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.measure.Range;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Placement;

/** How long a run takes, and when to look at it. */
record Timing(Clock clock, BatchStep step, Placement run) {

  /** {@code look from 18:50, out by 18:55}; {@code out at 18:55}. */
  String done(String word) {
    int look = look();
    if (look == run.when().to()) {
      return word + " at " + at(look);
    }
    return "look from " + at(look) + ", " + word + " by " + at(run.when().to());
  }

  /** {@code 25 min, until 18:25} under someone's hands; else {@code until 18:25, look from 18:20},
   * with {@code hands-on until 18:08} between the two if it begins with hands. */
  String until() {
    String until = "until " + at(run.when().to());
    List<Need.Hands> hands = step.step().hands();
    if (hands.stream().anyMatch(each -> each.moment() instanceof Need.Moment.Throughout)) {
      return length().written() + ", " + until;
    }
    String first = hands.stream()
        .map(each -> each.moment() instanceof Need.Moment.First(int minutes)
            ? ", hands-on until " + at(run.when().from() + minutes) : "")
        .reduce("", String::concat);
    String look = look() == run.when().to() ? "" : ", look from " + at(look());
    return until + first + look;
  }

  /** The minute from which it may be done: written and booked minutes stretch alike. */
  private int look() {
    return run.when().from() + length().least();
  }

  private Range length() {
    Range written = step.step().takes().written().minutesFor(step.portions());
    int booked = run.when().minutes();
    if (booked == written.most()) {
      return written;
    }
    long least = Math.ceilDiv((long) written.least() * booked, Math.max(1, written.most()));
    return new Range((int) least, booked);
  }

  private String at(int minute) {
    return clock.time(minute, run.when().from());
  }
}
