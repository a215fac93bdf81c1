package ovenloom.cli.sheet;

import ovenloom.model.measure.Range;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.Placement;

/** How long a run takes, and when to look at it. */
record Timing(Clock clock, BatchStep step, Placement run) {

  /** {@code look from 18:50, out by 18:55}; {@code out at 18:55}. */
  String out(int at) {
    int look = look();
    return look >= at ? "out at " + at(at) : "look from " + at(look) + ", out by " + at(at);
  }

  /** {@code 25 min, until 18:25} under someone's hands; else {@code until 18:25, look from 18:20},
   * with {@code hands-on until 18:08} between the two if it begins with hands. */
  String until() {
    String until = "until " + at(run.when().to());
    if (isThroughout()) {
      return length().written() + ", " + until;
    }
    int free = free();
    String first = free == run.when().from() ? "" : ", hands-on until " + at(free);
    return look(until + first);
  }

  /** {@code until 18:25, look from 18:20}; what is given alone where the run always takes as long. */
  String look(String until) {
    return look() == run.when().to() ? until : until + ", look from " + at(look());
  }

  /** {@code Hands-on until 18:08.} where a bake begins with hands, or has them all the while; else nothing. */
  String handsOn() {
    int free = isThroughout() ? run.when().to() : free();
    return free == run.when().from() ? "" : " Hands-on until " + at(free) + ".";
  }

  private boolean isThroughout() {
    return step.step().hands().stream().anyMatch(each -> each.moment() instanceof Need.Moment.Throughout);
  }

  /** The minute at which the hands that the step begins with are free. */
  private int free() {
    return run.when().from()
        + step.step()
            .hands()
            .stream()
            .mapToInt(each -> each.moment() instanceof Need.Moment.First(int minutes) ? minutes : 0)
            .max()
            .orElse(0);
  }

  /** The minute from which it may be done: written and booked minutes stretch alike. */
  int look() {
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
