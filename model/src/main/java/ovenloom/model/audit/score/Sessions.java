package ovenloom.model.audit.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;

/** On the days before, every time somebody starts work again counts, and so does every wash. */
final class Sessions {

  private static final int POINTS_A_SESSION = 10;
  private static final int PAUSE = 60;
  private static final int HARDLY_WORK = 5;
  private static final int THE_DAY = 0;

  private Sessions() {}

  static long points(Ledger plan) {
    return Shares.sum(shares(plan));
  }

  static Map<String, Long> shares(Ledger plan) {
    return Map.of("washes", (long) plan.plan().washes().size(), "stretches of work", stretches(plan));
  }

  private static long stretches(Ledger plan) {
    long points = 0;
    long minutes = 0;
    int end = Integer.MIN_VALUE;
    for (Stretch work : before(Busy.in(plan).anybody())) {
      boolean isJoined = minutes > 0 && work.from() - end < PAUSE;
      if (!isJoined) {
        points += pointsFor(minutes);
        minutes = 0;
      }
      minutes += work.minutes();
      end = work.to();
    }
    return points + pointsFor(minutes);
  }

  private static long pointsFor(long minutes) {
    return minutes < HARDLY_WORK ? 0 : POINTS_A_SESSION;
  }

  private static List<Stretch> before(Stretches work) {
    List<Stretch> before = new ArrayList<>();
    for (Stretch each : work.parts()) {
      if (each.from() < THE_DAY) {
        before.add(new Stretch(each.from(), Math.min(each.to(), THE_DAY)));
      }
    }
    return before;
  }
}
