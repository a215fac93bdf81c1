package ovenloom.solver.place;

import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;

/** Puts starts on whole steps of the clock, where nobody is the worse for it. */
final class Clock {

  private final Draft draft;
  private final int step;
  private final Runs runs;
  private final Bonds bonds;

  Clock(Runs runs, Draft draft, Bonds bonds) {
    this.runs = runs;
    this.draft = draft;
    this.bonds = bonds;
    step = runs.event().clock();
  }

  /** Its step, minutes. */
  int step() {
    return step;
  }

  /**
   * The last whole step not after a start; the start itself where a link would be broken by it, or food would be kept longer
   * than it may somewhere and is not yet.
   */
  int down(Request request, int start) {
    Run run = request.run();
    int on = Math.floorDiv(start, step) * step;
    int end = start + request.minutes();
    int sooner = start - on;
    for (Tie tie : bonds.after(run.index())) {
      if (!holds(tie, end, sooner)) {
        return start;
      }
    }
    for (int wait : bonds.waits(run.index())) {
      if (!keeps(runs.waits().get(wait), end, sooner)) {
        return start;
      }
    }
    return on;
  }

  private boolean holds(Tie tie, int end, int sooner) {
    int gap = draft.start[tie.later()] - end;
    if (tie.link().kind() == Link.Kind.ALONGSIDE) {
      return gap + sooner < 0;
    }
    Integer most = tie.link().most();
    return most == null || !isCrossed(most, gap, sooner);
  }

  private boolean keeps(Wait wait, int end, int sooner) {
    for (Wait.Taker taker : wait.takers()) {
      int minutes = draft.taken(taker) - end;
      if ((wait.keeps().stores().isEmpty()
          && isCrossed(Keeps.FREE_ON_THE_COUNTER + wait.onTheCounter(taker), minutes, sooner))
          || isCrossedInAStore(wait.keeps(), minutes, sooner)
          || isCrossed(wait.keeps().oven(), minutes, sooner)
          || isCrossed(wait.keeps().burner(), minutes, sooner)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isCrossedInAStore(Keeps keeps, int minutes, int sooner) {
    for (int most : keeps.stores().values()) {
      if (isCrossed(most, minutes, sooner)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isCrossed(@Nullable Integer most, int minutes, int sooner) {
    return most != null && minutes <= most && minutes + sooner > most;
  }
}
