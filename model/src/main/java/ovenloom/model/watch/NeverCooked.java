package ovenloom.model.watch;

import java.util.ArrayList;
import java.util.List;
import ovenloom.model.life.Reach;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.safety.HoldTime;
import ovenloom.model.safety.Profile;

/**
 * Raw food, or what was cooked and chilled, gets nowhere hot enough, neither in its step nor in any that comes after.
 *
 * @param at what is said of the most it gets to
 */
record NeverCooked(Profile profile, Ways ways, Reach reach, String at) implements Foregone {

  static final String AT_MOST = " at most";
  static final String NO_LONGER = " at most if it bakes no longer than it needs";

  /** Food that is as near to a temperature counts as that warm, K. */
  private static final double THE_SAME = 0.05;

  @Override
  public List<Unavoidable> find(BatchStep step) {
    List<Unavoidable> all = new ArrayList<>();
    if (reach.heats(step) && ways.areFollowed(step)) {
      if (ways.upTo(step).filter(reach::heats).count() == 1) {
        profile.cook()
            .stream()
            .filter(cook -> step.dish().tags().contains(cook.food()))
            .forEach(cook -> tooCold(step, cook.hold(), "Cooked to", all));
      } else if (ways.from(step).filter(reach::heats).count() == 1 && isHeatedAgain(step)) {
        profile.reheat().forEach(again -> tooCold(step, again.hold(), "Heated again to", all));
      }
    }
    return all;
  }

  /** Whether some way to it leads from the heat through the cold. */
  private boolean isHeatedAgain(BatchStep step) {
    return ways.upTo(step)
        .filter(each -> each.index() != step.index())
        .filter(each -> !reach.heats(each) && isInTheCold(each))
        .anyMatch(cold -> ways.upTo(cold).anyMatch(reach::heats));
  }

  private boolean isInTheCold(BatchStep step) {
    return step.step().shelf() != null
        && reach.shelves(step).stream().allMatch(store -> store.kind().isCold());
  }

  private void tooCold(BatchStep step, HoldTime hold, String what, List<Unavoidable> all) {
    double least = hold.rows().getFirst().temperature().inCelsius();
    boolean asked = ways.from(step).filter(reach::heats).anyMatch(each -> reach.done(each) >= least);
    double most = asked ? Double.POSITIVE_INFINITY
        : ways.from(step).mapToDouble(reach::inside).max().orElseThrow();
    if (most + THE_SAME < least) {
      all.add(new Unavoidable(step, List.of("core"), least - most,
          what + " " + Math.round(most) + " C" + at + ", at least " + CookedThrough.least(hold) + ".",
          hold.source(), CookedThrough.HELP));
    }
  }
}
