package ovenloom.solver.search;

import java.util.Random;
import ovenloom.solver.place.Decisions;

/** Loosens good decisions here and there, so that a search that starts from them leaves the spot where the last got stuck. */
final class Shake {

  /** Of a hundred steps, so many give up what was decided for them, and as many change their place in the queue. */
  private static final int PERCENT = 10;

  private static final int NEAR = 20;

  private Shake() {}

  static Decisions of(Decisions good, Random lot) {
    Decisions shaken = good.copy();
    double[] wanted = good.turns();
    for (int turn = 0; turn < good.steps(); turn++) {
      int step = good.step(turn);
      if (lot.nextInt(100) < PERCENT) {
        shaken.setEarlier(step, 0);
        shaken.setBake(step, Decisions.OPEN);
        shaken.setStay(step, Decisions.OPEN);
        shaken.setTogether(step, Decisions.AS_MANY_AS_MAY);
      }
      if (lot.nextInt(100) < PERCENT) {
        wanted[step] += lot.nextDouble(-NEAR, NEAR);
      }
    }
    shaken.queueBy(wanted);
    return shaken;
  }
}
