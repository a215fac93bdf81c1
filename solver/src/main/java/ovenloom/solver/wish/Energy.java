package ovenloom.solver.wish;

import java.util.Objects;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.OvenLog;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.WaitPart;

/** Little is spent on heat: ovens warming and at temperature, burners under a pot. */
final class Energy implements WishPoints {

  /** A tenth of a kilowatt hour, in watt minutes. */
  private static final long A_POINT = 6_000;

  @Override
  public Wish wish() {
    return Wish.ENERGY;
  }

  @Override
  public long of(Outcome outcome) {
    return (ovens(outcome) + burners(outcome)) / A_POINT;
  }

  private static long ovens(Outcome outcome) {
    Kitchen kitchen = outcome.draft.runs().event().kitchen();
    long spent = 0;
    for (OvenLog log : outcome.ovens) {
      Oven oven = Objects.requireNonNull(kitchen.oven(log.oven()));
      for (OvenLog.Span span : log.spans()) {
        spent += (long) span.when().minutes() * watts(oven, span.doing());
      }
    }
    return spent;
  }

  private static int watts(Oven oven, OvenLog.Doing doing) {
    return switch (doing) {
      case WARMING -> oven.heating().watts();
      case AT -> oven.holding().watts();
      case COOLING -> 0;
    };
  }

  private static long burners(Outcome outcome) {
    Kitchen kitchen = outcome.draft.runs().event().kitchen();
    long spent = 0;
    for (Run run : outcome.draft.runs().runs()) {
      int minutes = outcome.draft.end(run.index()) - outcome.draft.start(run.index());
      for (int pot = 0; pot < outcome.draft.burnersOf(run.index()); pot++) {
        int burner = outcome.draft.burner(run.index(), pot);
        spent += (long) minutes * kitchen.burners().get(burner).power().watts();
      }
    }
    for (int wait = 0; wait < outcome.draft.runs().waits().size(); wait++) {
      for (WaitPart part : outcome.draft.parts(wait)) {
        for (int pot = 0; part.kind() == WaitPart.Kind.BURNER && pot < part.levels(); pot++) {
          spent += (long) part.minutes() * kitchen.burners().get(part.level(pot)).power().watts();
        }
      }
    }
    return spent;
  }
}
