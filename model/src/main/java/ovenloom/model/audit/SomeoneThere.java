package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.Placement;

/** Someone is there when food is moved or a dial is turned, and while anything cooks. */
record SomeoneThere() implements KitchenRule {

  @Override
  public String id() {
    return "someone there";
  }

  @Override
  public String sentence() {
    return "Someone is there when food is moved or a dial is turned, and while anything cooks.";
  }

  @Override
  public List<Break> check(Case plan) {
    Attendance attendance = Attendance.of(plan);
    List<Break> breaks = new ArrayList<>();
    Moves.of(plan).forEach((moment, moves) -> moved(attendance, moment, moves, breaks));
    for (Placement run : plan.plan().placements()) {
      List<BatchStep> steps = plan.steps(run);
      if (!steps.isEmpty() && steps.getFirst().step().cooks() && !steps.getFirst().step().unattended()) {
        cooks(plan, attendance, run, breaks);
      }
    }
    return breaks;
  }

  private void moved(Attendance attendance, int moment, Set<String> moves, List<Break> breaks) {
    int away = attendance.away(moment).orElse(1);
    if (away > 0) {
      breaks.add(Break.of(this, List.copyOf(moves), new Stretch(moment, moment), away, Break.Unit.MINUTES,
          "nobody is there then, nor for " + away + " min before or after"));
    }
  }

  private void cooks(Case plan, Attendance attendance, Placement run, List<Break> breaks) {
    Stretches missing = attendance.missing(run.when());
    if (!missing.isEmpty()) {
      Stretch when = new Stretch(missing.parts().getFirst().from(), missing.parts().getLast().to());
      breaks.add(Break.of(this, List.of(plan.name(run)), when, missing.minutes(), Break.Unit.MINUTES,
          "it cooks for " + missing.minutes() + " min while nobody is there"));
    }
  }
}
