package ovenloom.solver.wish;

import java.util.BitSet;
import ovenloom.model.menu.Wish;

/** Work before the day comes in few sittings, and little is washed up. */
final class Sessions implements WishPoints {

  private static final int POINTS_A_SITTING = 10;
  private static final int PAUSE = 60;
  private static final int HARDLY_WORK = 5;

  @Override
  public Wish wish() {
    return Wish.SESSIONS;
  }

  @Override
  public long of(Outcome outcome) {
    int zero = -outcome.draft.runs().event().from();
    BitSet busy = outcome.anyone();
    if (zero > 0) {
      busy.clear(zero, Math.max(zero, busy.length()));
    } else {
      busy.clear();
    }
    return (long) POINTS_A_SITTING * sittings(busy) + outcome.draft.washes().size();
  }

  private static int sittings(BitSet busy) {
    int sittings = 0;
    int minutes = 0;
    int last = -PAUSE;
    for (int from = busy.nextSetBit(0); from >= 0; from = busy.nextSetBit(last)) {
      if (from - last >= PAUSE) {
        sittings += minutes >= HARDLY_WORK ? 1 : 0;
        minutes = 0;
      }
      last = busy.nextClearBit(from);
      minutes += last - from;
    }
    return sittings + (minutes >= HARDLY_WORK ? 1 : 0);
  }
}
