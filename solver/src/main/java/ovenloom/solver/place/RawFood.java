package ovenloom.solver.place;

import ovenloom.model.life.Cards;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.CookTo;

/** The cooking temperature that the food of each step still asks for, so that raw stands below cooked. */
final class RawFood {

  private final long[] requires;

  RawFood(Cards cards) {
    Work work = cards.work();
    requires = new long[work.steps().size()];
    for (BatchStep unit : work.steps()) {
      requires[unit.index()] = cards.heats(unit) ? 0 : before(work, unit);
    }
  }

  /** In millikelvin; 0 for food that asks for none. */
  long requires(int step) {
    return requires[step];
  }

  private long before(Work work, BatchStep unit) {
    boolean ownFood = false;
    long most = 0;
    for (BatchLink link : work.into(unit.index())) {
      if (link.carriesFood()) {
        ownFood |= work.steps().get(link.from()).dish().name().equals(unit.dish().name());
        most = Math.max(most, requires[link.from()]);
      }
    }
    CookTo own = ownFood ? null : CookTo.of(unit.dish().tags());
    return own == null ? most : Math.max(most, own.temperature().milliKelvin());
  }
}
