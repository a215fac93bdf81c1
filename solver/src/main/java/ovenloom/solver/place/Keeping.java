package ovenloom.solver.place;

import java.util.List;
import ovenloom.model.menu.Keeps;

/** How long food keeps where it waits: what it spends in each place adds up. */
final class Keeping {

  private final Runs runs;
  private final Draft draft;

  Keeping(Runs runs, Draft draft) {
    this.runs = runs;
    this.draft = draft;
  }

  /** How many minutes too long the food is kept, for the taker that is worst off; 0 or less where it keeps. */
  int worstExcess(Wait wait, List<WaitPart> parts) {
    int worst = Integer.MIN_VALUE;
    for (Wait.Taker taker : wait.takers()) {
      worst = Math.max(worst, excess(wait, taker, parts));
    }
    return worst;
  }

  private int excess(Wait wait, Wait.Taker taker, List<WaitPart> parts) {
    int until = draft.taken(taker);
    double share = 0;
    int counter = 0;
    int longest = 1;
    for (WaitPart part : parts) {
      int minutes = Math.max(0, Math.min(part.to(), until) - part.from());
      if (part.kind() == WaitPart.Kind.COUNTER) {
        counter += minutes;
      } else {
        int limit = limit(wait.keeps(), part);
        share += minutes / (double) limit;
        longest = Math.max(longest, limit);
      }
    }
    int over = counter - Keeps.FREE_ON_THE_COUNTER;
    int limit = wait.onTheCounter(taker);
    if (over > 0 && limit == 0) {
      return over;
    }
    share += over > 0 ? over / (double) limit : 0;
    return (int) Math.ceil((share - 1) * Math.max(longest, limit) - 1e-9);
  }

  private int limit(Keeps keeps, WaitPart part) {
    Integer limit = switch (part.kind()) {
      case COUNTER -> keeps.counter();
      case BURNER -> keeps.burner();
      case OVEN -> keeps.oven();
      case STORE -> keeps.stores().get(runs.event().kitchen().stores().get(part.place()).name());
    };
    return limit == null ? 1 : limit;
  }
}
