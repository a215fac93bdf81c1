package ovenloom.solver.place;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.OvenLog;
import ovenloom.solver.timeline.Presence;

/**
 * Who is out of the house on an errand leaves nothing on the heat, and nothing to be carried, that nobody else is there for. It
 * shows when all runs are placed; the search finds its way to an hour that is well. A little stricter than the rule: food that
 * stays where it is counts as carried.
 */
final class Errands {

  private final Runs runs;
  private final DialLog dials;
  private final Carrying carrying;
  private final int[] errands;

  Errands(Runs runs) {
    this.runs = runs;
    dials = new DialLog(runs.event());
    carrying = new Carrying(runs);
    errands = runs.runs().stream().filter(run -> run.step().away()).mapToInt(Run::index).toArray();
  }

  /** Notes on the draft each errand on which somebody goes who is needed. */
  void check(Draft draft) {
    if (errands.length == 0) {
      return;
    }
    Presence home = home(draft);
    int[] moments = moments(draft);
    for (int errand : errands) {
      for (int i = 0; i < draft.handsOf(errand); i++) {
        Crew.Taken out = draft.hands(errand, i);
        int off = left(draft, home, out) + missed(home, moments, out);
        if (off > 0) {
          draft.fallsShort(errand, off);
        }
      }
    }
  }

  private Presence home(Draft draft) {
    Presence home = Presence.never();
    List<Cook> cooks = runs.event().cooks();
    for (int cook = 0; cook < cooks.size(); cook++) {
      Presence here = Presence.never();
      for (Stretch hours : cooks.get(cook).hours()) {
        here = here.and(hours.from(), hours.to());
      }
      for (int errand : errands) {
        for (int i = 0; i < draft.handsOf(errand); i++) {
          Crew.Taken out = draft.hands(errand, i);
          here = out.cooks().contains(cook) ? here.except(out.from(), out.to()) : here;
        }
      }
      home = home.and(here);
    }
    return home;
  }

  /** Minutes for which things that need somebody about are left alone. */
  private int left(Draft draft, Presence home, Crew.Taken out) {
    int minutes = 0;
    for (Run run : runs.runs()) {
      if (run.footing().cooks() && !run.step().unattended()) {
        int from = Math.max(out.from(), draft.start(run.index()));
        int to = Math.min(out.to(), draft.end(run.index()));
        minutes += from < to && !home.covers(from, to) ? to - from : 0;
      }
    }
    return minutes;
  }

  /** How many moments there are at which somebody should be there. */
  private static int missed(Presence home, int[] moments, Crew.Taken out) {
    return (int) Arrays.stream(moments)
        .filter(moment -> out.from() < moment && moment < out.to() && !home.openAt(moment))
        .count();
  }

  /** When food is carried and dials are turned. */
  private int[] moments(Draft draft) {
    IntStream ovens = dials.of(draft)
        .stream()
        .map(OvenLog::spans)
        .flatMap(List::stream)
        .flatMapToInt(span -> IntStream.of(span.when().from(), span.when().to()));
    return IntStream.concat(carrying.moments(draft), ovens).distinct().toArray();
  }
}
