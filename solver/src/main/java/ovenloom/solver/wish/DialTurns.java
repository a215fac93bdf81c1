package ovenloom.solver.wish;

import ovenloom.model.menu.Wish;
import ovenloom.solver.place.DialLog;

/** An oven's dial is left alone. */
final class DialTurns implements WishPoints {

  private static final int POINTS_A_TURN = 5;

  @Override
  public Wish wish() {
    return Wish.DIAL;
  }

  @Override
  public long of(Outcome outcome) {
    return (long) POINTS_A_TURN * DialLog.turns(outcome.draft);
  }
}
