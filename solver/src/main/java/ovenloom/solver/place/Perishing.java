package ovenloom.solver.place;

import ovenloom.model.life.Cards;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Perishable;

/** Which steps leave food that must be kept hot or cold, by what it is and what it goes into. */
final class Perishing {

  private final boolean[] out;
  private final boolean[] onceCooked;

  Perishing(Cards cards) {
    Work work = cards.work();
    int steps = work.steps().size();
    boolean[] raw = new boolean[steps];
    boolean[] cooked = new boolean[steps];
    for (BatchStep step : work.steps()) {
      int i = step.index();
      raw[i] = Perishable.isFromTheStart(step.dish().tags());
      cooked[i] = cards.heats(step);
      for (BatchLink link : work.into(i)) {
        raw[i] |= link.carriesFood() && raw[link.from()];
        cooked[i] |= link.carriesFood() && cooked[link.from()];
      }
    }
    boolean[] ever = new boolean[steps];
    boolean[] once = new boolean[steps];
    boolean[] always = new boolean[steps];
    out = new boolean[steps];
    onceCooked = new boolean[steps];
    for (BatchStep step : work.steps().reversed()) {
      int i = step.index();
      if (work.goesToTheTable(i)) {
        ever[i] = !Perishable.isNever(step.dish().tags());
        once[i] = ever[i] && Perishable.isOnceCooked(step.dish().matter().kind());
        always[i] = ever[i] && Perishable.isFromTheStart(step.dish().tags());
      }
      for (BatchLink link : work.outOf(i)) {
        ever[i] |= link.carriesFood() && ever[link.to()];
        once[i] |= link.carriesFood() && once[link.to()];
        always[i] |= link.carriesFood() && always[link.to()];
      }
      onceCooked[i] = ever[i] && (once[i] || always[i] || raw[i]);
      out[i] = ever[i] && (always[i] || raw[i] || (once[i] && cooked[i]));
    }
  }

  /** Whether the food of a step must be kept hot or cold. */
  boolean mustBeKept(int step) {
    return out[step];
  }

  /** Whether it must be from when it is cooked, if this step cooks it. */
  boolean mustBeCooled(int step) {
    return onceCooked[step];
  }
}
