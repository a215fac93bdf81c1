package ovenloom.cli.sheet;

import java.util.HashSet;
import java.util.Set;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Profile;

/**
 * How many acts there can be at most, whatever the plan of an event, that begin neither a run nor a stretch of someone's hands: food
 * carried, a dial turned, a look.
 */
public final class LooseActs {

  private final Event event;
  private final Work work;

  private LooseActs(Event event) {
    this.event = event;
    this.work = Work.of(event);
  }

  /** Of all plans of an event. */
  public static int most(Event event) {
    LooseActs acts = new LooseActs(event);
    return acts.work.steps().stream().mapToInt(acts::most).sum();
  }

  private int most(BatchStep step) {
    return carried(step) + late(step) + probed(step) + cooled(step) + turned(step) + switched(step);
  }

  /** From where it was made to the counter, a cold place and the counter again, as the rules of waiting have it. */
  private int carried(BatchStep step) {
    boolean isAtHand = !step.step().hasAPlace() || isTakenOutByHands(step);
    return (isAtHand ? 0 : 1) + (work.leavesAStay(step.index()) && mayBeStored(step) ? 2 : 0);
  }

  /** What comes out of its oven when it is done takes hands, unless someone is at work on it then. */
  private static boolean isTakenOutByHands(BatchStep step) {
    return step.step().bake() != null && step.step().hands().isEmpty() && !mayStayInItsOven(step);
  }

  private static boolean mayBeStored(BatchStep step) {
    Keeps keeps = step.step().keeps();
    return keeps != null && !keeps.stores().isEmpty();
  }

  private static boolean mayStayInItsOven(BatchStep step) {
    Keeps keeps = step.step().keeps();
    return keeps != null && keeps.oven() != null;
  }

  /** What comes to the table in waves is told with its course only where it is due with it. */
  private int late(BatchStep step) {
    boolean isDueLater = event.due(step.dish(), step.batches().first()) > event.courseOf(step.dish()).at();
    return isDueLater && work.goesToTheTable(step.index()) ? 1 : 0;
  }

  private static int probed(BatchStep step) {
    if (ProbeActs.core(step) == null) {
      return 0;
    }
    return step.step().bake() != null && mayStayInItsOven(step) ? 2 : 1;
  }

  /** A thermometer for each limit, and a line for what to do where it is missed. */
  private int cooled(BatchStep step) {
    boolean mayCool = step.step().cooks() && mayGoCold(step, new HashSet<>());
    return mayCool ? 2 * Profile.of(event.rules()).cool().size() : 0;
  }

  private boolean mayGoCold(BatchStep step, Set<Integer> seen) {
    if (!seen.add(step.index())) {
      return false;
    }
    return mayBeStored(step) || step.step().shelf() != null || work.outOf(step.index())
        .stream()
        .filter(BatchLink::carriesFood)
        .anyMatch(link -> mayGoCold(work.steps().get(link.to()), seen));
  }

  /** Up or down for each stage, to a hold, off. */
  private static int turned(BatchStep step) {
    Need.Bake bake = step.step().bake();
    return bake == null ? 0 : bake.stages().size() + (mayStayInItsOven(step) ? 2 : 1);
  }

  /** A cabinet or a chiller, on and off. */
  private int switched(BatchStep step) {
    return 2 * (int) event.kitchen()
        .stores()
        .stream()
        .filter(store -> store.kind() == Store.Kind.HOT || store.air() == Air.BLAST)
        .filter(store -> isWanted(store, step))
        .count();
  }

  private static boolean isWanted(Store store, BatchStep step) {
    Need.OnShelf shelf = step.step().shelf();
    Keeps keeps = step.step().keeps();
    boolean isNamed = keeps != null && keeps.stores().containsKey(store.name());
    return isNamed || (shelf != null && shelf.stores().contains(store.name()));
  }
}
