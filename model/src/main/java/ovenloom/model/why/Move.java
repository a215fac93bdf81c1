package ovenloom.model.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ovenloom.model.audit.Case;
import ovenloom.model.audit.DueOvens;
import ovenloom.model.audit.Wait;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.life.Cards;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;
import ovenloom.model.plan.Stay;

/**
 * One run of a plan put some minutes later, or earlier. It keeps its cooks, its oven, its burners and its shelves; waits before and
 * after it grow and shrink, and ovens are switched on when they then have to be. All else stays as it is.
 *
 * @param minutes later; less than 0 for earlier
 */
record Move(Cards cards, Plan plan, Placement run, int minutes) {

  Plan made(Stretching stretching) {
    List<Placement> runs = new ArrayList<>(
        plan.placements().stream().map(each -> each.equals(run) ? Shifted.by(run, minutes) : each).toList());
    List<Stay> stays = stays(with(runs, plan.stays(), plan.ovens(), plan.score()), stretching);
    runs.replaceAll(each -> takingOut(each, stays));
    runs.sort(Comparator.comparingInt(each -> each.when().from()));
    Plan waited = with(runs, stays, plan.ovens(), plan.score());
    Plan heated = with(runs, stays, DueOvens.of(new Case(cards, waited)), plan.score());
    return with(runs, stays, heated.ovens(), Reckoning.of(cards, heated));
  }

  /** With the hands that took it out of the oven after a wait, where it no longer waits there. */
  private Placement takingOut(Placement each, List<Stay> now) {
    List<HandsOn> hands = new ArrayList<>(each.hands());
    for (Stay stay : plan.stays()) {
      boolean isIts = stay.dish().equals(each.dish()) && stay.step().equals(each.step())
          && each.batches().holds(stay.batches());
      if (isIts && !stay.hands().isEmpty() && now.stream()
          .anyMatch(
              other -> other.parts().isEmpty() && isOfTheSameFood(stay, other))) {
        hands.addAll(stay.hands());
      }
    }
    return new Placement(each.dish(), each.step(), each.batches(), each.when(), each.baking(), each.burners(),
        each.shelves(), hands);
  }

  private static boolean isOfTheSameFood(Stay one, Stay other) {
    return one.dish().equals(other.dish()) && one.step().equals(other.step())
        && one.batches().equals(other.batches());
  }

  private List<Stay> stays(Plan moved, Stretching stretching) {
    List<Stay> stays = new ArrayList<>(moved.stays());
    for (Wait wait : Wait.all(new Case(cards, moved))) {
      Stay old = moved.stays().stream().filter(wait::isThatOf).findFirst().orElse(null);
      if (old != null) {
        stays.set(stays.indexOf(old), stretching.over(old, wait.when()));
      } else if (wait.when().minutes() > 0) {
        stays.add(new Stay(wait.run().dish(), wait.run().step(), wait.batches(),
            Stretching.onTheCounter(wait.when()), List.of()));
      }
    }
    return stays;
  }

  private Plan with(List<Placement> runs, List<Stay> stays, List<OvenLog> ovens, Score score) {
    return new Plan(plan.event(), plan.sources(), runs, stays, ovens, plan.washes(), plan.layouts(), score);
  }
}
