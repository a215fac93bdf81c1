package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Link;

/** Puts starts on whole steps of the clock, where nobody is the worse for it. */
final class Clock {

  private final Draft draft;
  private final int step;
  private final List<List<Tie>> ties = new ArrayList<>();
  private final List<List<Wait>> waits = new ArrayList<>();

  Clock(Runs runs, Draft draft) {
    this.draft = draft;
    step = runs.event().clock();
    for (Run run : runs.runs()) {
      ties.add(runs.ties().stream().filter(tie -> tie.earlier() == run.index()).toList());
      waits.add(runs.waits().stream().filter(wait -> wait.run() == run.index()).toList());
    }
  }

  /** Its step, minutes. */
  int step() {
    return step;
  }

  /**
   * The last whole step not after a start; the start itself where a link would be broken by it, or food would be kept longer
   * than it may somewhere and is not yet.
   */
  int down(Run run, int start) {
    int on = Math.floorDiv(start, step) * step;
    int end = start + run.minutes();
    int sooner = start - on;
    boolean harmless = ties.get(run.index()).stream().allMatch(tie -> holds(tie, end, sooner))
        && waits.get(run.index()).stream().allMatch(wait -> keeps(wait, end, sooner));
    return harmless ? on : start;
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
      int taken = taker.run() == Wait.TABLE ? taker.due() : draft.start[taker.run()];
      int minutes = taken - end;
      if ((wait.keeps().stores().isEmpty()
          && isCrossed(Keeps.FREE_ON_THE_COUNTER + wait.onTheCounter(taker), minutes, sooner))
          || wait.keeps().stores().values().stream().anyMatch(most -> isCrossed(most, minutes, sooner))
          || isCrossed(wait.keeps().oven(), minutes, sooner)
          || isCrossed(wait.keeps().burner(), minutes, sooner)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isCrossed(@Nullable Integer most, int minutes, int sooner) {
    return most != null && minutes <= most && minutes + sooner > most;
  }
}
