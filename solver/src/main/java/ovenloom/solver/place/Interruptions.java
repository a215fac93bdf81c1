package ovenloom.solver.place;

import java.util.BitSet;
import java.util.List;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;

/**
 * Moments at which food is carried and everybody is in the middle of work or at a break. No rule forbids them, and a sheet with few
 * of them is easier to follow.
 */
final class Interruptions {

  private final Runs runs;
  private final int zero;
  private final Carrying carrying;

  /** By cook: the moments at which one is there and at no break. */
  private final BitSet[] there;

  /** The moments at which anyone is in hours. */
  private final BitSet inHours = new BitSet();

  private final BitSet[] amid;

  Interruptions(Runs runs) {
    this.runs = runs;
    zero = runs.event().from();
    carrying = new Carrying(runs);
    there = runs.event().cooks().stream().map(this::there).toArray(BitSet[]::new);
    amid = new BitSet[there.length];
    for (int cook = 0; cook < amid.length; cook++) {
      amid[cook] = new BitSet();
    }
  }

  private BitSet there(Cook cook) {
    BitSet there = new BitSet();
    for (Stretch hours : cook.hours()) {
      there.set(Math.max(0, hours.from() - zero), Math.max(0, hours.to() + 1 - zero));
    }
    inHours.or(there);
    for (Stretch pause : cook.breaks()) {
      there.clear(Math.max(0, pause.from() + 1 - zero), Math.max(0, pause.to() - zero));
    }
    return there;
  }

  /** How many there are. */
  int of(Draft draft) {
    for (BitSet each : amid) {
      each.clear();
    }
    for (int run = 0; run < runs.runs().size(); run++) {
      for (int i = 0; i < draft.handsOf(run); i++) {
        Crew.Taken hands = draft.hands(run, i);
        for (int cook : hands.cooks()) {
          isAtWork(cook, hands.from(), hands.to());
        }
      }
    }
    List<VesselPool.Done> washes = draft.washes;
    washes.forEach(wash -> isAtWork(wash.cook(), wash.from(), wash.to()));
    BitSet moments = new BitSet();
    carrying.each(draft, moment -> {
      if (moment >= zero) {
        moments.set(moment - zero);
      }
    });
    moments.and(inHours);
    int interruptions = 0;
    for (int moment = moments.nextSetBit(0); moment >= 0; moment = moments.nextSetBit(moment + 1)) {
      interruptions += isAnyoneFree(moment) ? 0 : 1;
    }
    return interruptions;
  }

  private void isAtWork(int cook, int from, int to) {
    if (to - from > 1) {
      amid[cook].set(Math.max(0, from + 1 - zero), Math.max(0, to - zero));
    }
  }

  private boolean isAnyoneFree(int moment) {
    for (int cook = 0; cook < there.length; cook++) {
      if (there[cook].get(moment) && !amid[cook].get(moment)) {
        return true;
      }
    }
    return false;
  }
}
