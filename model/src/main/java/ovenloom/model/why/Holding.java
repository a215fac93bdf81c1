package ovenloom.model.why;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.audit.Break;
import ovenloom.model.audit.Case;
import ovenloom.model.plan.Placement;

/** Pushes one run later, a minute and then farther, until something breaks. */
public final class Holding {

  private final Trials trials;
  private final Placement run;
  private int free;
  private int tooFar;
  private List<Break> breaks = List.of();
  private @Nullable Trial best;

  private Holding(Trials trials, Placement run) {
    this.trials = trials;
    this.run = run;
  }

  /** What holds it. */
  public static Hold of(Trials trials, Placement run) {
    Holding holding = new Holding(trials, run);
    holding.push();
    Case plan = trials.opened();
    return new Hold(run, plan.name(run), Next.of(plan, run), holding.free, holding.breaks, holding.best);
  }

  /** What holds it, then what holds the run that follows and holds it, and so on to what something else holds. */
  public static List<Hold> chain(Trials trials, Placement run) {
    List<Hold> chain = new ArrayList<>();
    Placement at = run;
    while (at != null) {
      Hold hold = of(trials, at);
      chain.add(hold);
      at = hold.best() == null ? hold.heldBy() : null;
    }
    return chain;
  }

  private void push() {
    int end = trials.plan().event().to() - run.when().to() + 1;
    int minutes = 1;
    while (isKept(Math.min(minutes, end))) {
      minutes = minutes == 1 ? Math.max(2, clock()) : 2 * minutes;
    }
    while (tooFar - free > 1) {
      isKept((free + tooFar) / 2);
    }
  }

  private boolean isKept(int minutes) {
    Trial trial = trials.later(run, minutes);
    if (!trial.keepsAllRules()) {
      tooFar = minutes;
      breaks = trial.breaks();
      return false;
    }
    free = minutes;
    boolean isBest = best == null || trial.plan().score().compareTo(best.plan().score()) < 0;
    best = minutes >= clock() && isBest ? trial : best;
    return true;
  }

  private int clock() {
    return trials.plan().event().clock();
  }
}
