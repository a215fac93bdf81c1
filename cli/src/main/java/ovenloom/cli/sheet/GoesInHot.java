package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.kitchen.Store;
import ovenloom.model.life.Leg;
import ovenloom.model.life.Life;
import ovenloom.model.life.Served;
import ovenloom.model.menu.BatchStep;

/** Food that is predicted to be hot as it goes into a fridge or a freezer, and how it stands there so that it cools as predicted. */
record GoesInHot(Life life) {

  /** A sentence that follows, of steps whose food goes in together; empty for what is hot no more. */
  String sentence(List<BatchStep> steps, int at) {
    boolean isHot = steps.stream()
        .flatMap(step -> life.of(step).stream())
        .anyMatch(leg -> leg.when().from() == at && isHot(leg));
    if (!isHot) {
      return "";
    }
    return isCovered(steps.getFirst()) ? " It goes in hot: leave air around it."
        : " It goes in hot: leave it uncovered, with air around it.";
  }

  private static boolean isHot(Leg leg) {
    Store store = leg.store();
    return store != null && coolsSlowly(store) && leg.food().getFirst().mean() >= Served.HOT;
  }

  /** A blast chiller and ice water are made for hot food. */
  private static boolean coolsSlowly(Store store) {
    return store.kind().isCold() && switch (store.air()) {
      case STILL, MOVING -> true;
      case BLAST, ICE_WATER -> false;
    };
  }

  private static boolean isCovered(BatchStep step) {
    Boolean own = step.step().covered();
    return Boolean.TRUE.equals(own == null ? step.dish().matter().covered() : own);
  }
}
