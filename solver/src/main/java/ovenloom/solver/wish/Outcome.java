package ovenloom.solver.wish;

import java.util.BitSet;
import java.util.List;
import ovenloom.model.plan.OvenLog;
import ovenloom.solver.place.Crew;
import ovenloom.solver.place.DialLog;
import ovenloom.solver.place.Draft;
import ovenloom.solver.place.Run;
import ovenloom.solver.place.VesselPool;

/** A draft as wishes look at it: the ovens' logs and the minutes in which each cook is busy. */
final class Outcome {

  final Draft draft;
  final List<OvenLog> ovens;

  /** By cook: busy minutes, counted from the first of the calendar; serving steps left out. */
  final BitSet[] busy;

  Outcome(Draft draft, DialLog dials) {
    this.draft = draft;
    ovens = dials.of(draft);
    busy = new BitSet[draft.runs().event().cooks().size()];
    for (int cook = 0; cook < busy.length; cook++) {
      busy[cook] = new BitSet();
    }
    for (Run run : draft.runs().runs()) {
      for (int i = 0; !run.step().serve() && i < draft.handsOf(run.index()); i++) {
        Crew.Taken hands = draft.hands(run.index(), i);
        hands.cooks().forEach(cook -> mark(cook, hands.from(), hands.to()));
      }
    }
    for (VesselPool.Done wash : draft.washes()) {
      mark(wash.cook(), wash.from(), wash.to());
    }
  }

  private void mark(int cook, int from, int to) {
    int zero = draft.runs().event().from();
    busy[cook].set(Math.max(0, from - zero), Math.max(0, to - zero));
  }

  /** Minutes in which any cook is busy. */
  BitSet anyone() {
    BitSet anyone = new BitSet();
    for (BitSet one : busy) {
      anyone.or(one);
    }
    return anyone;
  }
}
