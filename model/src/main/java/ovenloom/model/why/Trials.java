package ovenloom.model.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ovenloom.model.audit.Audit;
import ovenloom.model.audit.Case;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/** Tries changes of one plan by asking the audit; nothing here knows how the plan was found. */
public final class Trials {

  private static final Comparator<Trial> BEST_FIRST = Comparator
      .<Trial>comparingInt(trial -> trial.breaks().size())
      .thenComparing(trial -> trial.plan().score());

  private final Cards cards;
  private final Plan plan;

  /**
   * Of one plan.
   *
   * @param plan one that breaks no rule
   */
  public Trials(Plan plan) {
    this.plan = plan;
    cards = new Cards(Work.of(plan.event()));
  }

  Plan plan() {
    return plan;
  }

  /** The plan beside its work. */
  Case opened() {
    return new Case(cards, plan);
  }

  /** One of its runs so many minutes later, with waits stretched in a way that breaks nothing, else least. */
  public Trial later(Placement run, int minutes) {
    Move move = new Move(cards, plan, run, minutes);
    List<Trial> trials = new ArrayList<>();
    for (Stretching stretching : Stretching.values()) {
      if (trials.stream().noneMatch(Trial::keepsAllRules)) {
        Plan moved = move.made(stretching);
        trials.add(new Trial(minutes, Audit.of(moved, cards), moved));
      }
    }
    return trials.stream().min(BEST_FIRST).orElseThrow();
  }
}
