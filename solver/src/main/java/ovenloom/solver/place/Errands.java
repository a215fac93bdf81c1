package ovenloom.solver.place;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Cook;
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

  /** When food goes to the table. */
  private final int[] dues;

  Errands(Runs runs) {
    this.runs = runs;
    dials = new DialLog(runs.event());
    carrying = new Carrying(runs);
    dues = runs.waits()
        .stream()
        .flatMap(wait -> wait.takers().stream())
        .filter(taker -> taker.run() == Wait.TABLE)
        .mapToInt(Wait.Taker::due)
        .distinct()
        .toArray();
    errands = runs.runs().stream().filter(run -> run.step().away()).mapToInt(Run::index).toArray();
  }

  /**
   * When a run that could end at a minute has to, so that nobody is out who is needed for what is placed already; as far as that can
   * be told before it has a cook, and counted with the fewest minutes.
   */
  int latestEnd(Run run, int end, int minutes, Draft draft) {
    int latest = end;
    int last = Integer.MAX_VALUE;
    while (errands.length > 0 && latest < last) {
      last = latest;
      latest = run.step().away() ? notOut(run, latest, minutes, draft) : notLeft(run, latest, minutes, draft);
    }
    return latest;
  }

  /** An errand, before whatever is on the heat meanwhile and whatever begins meanwhile. */
  private int notOut(Run errand, int end, int minutes, Draft draft) {
    int latest = end;
    for (int due : dues) {
      boolean isMissed = latest - minutes < due && due < latest;
      latest = isMissed && isAlone(latest - minutes, latest, errand) ? due : latest;
    }
    for (Run other : runs.runs()) {
      int i = other.index();
      if (draft.placed[i] && !other.step().away() && other.dish().food()) {
        int begins = draft.start[i];
        boolean isLeft = isWatched(other) && begins < latest && latest - minutes < draft.end[i];
        boolean isMissed = latest - minutes < begins && begins < latest;
        if ((isLeft || isMissed) && isAlone(latest - minutes, latest, errand)) {
          latest = Math.min(latest, begins);
        }
      }
    }
    return latest;
  }

  /** Anything else, before an errand or from the minute of its start. */
  private int notLeft(Run run, int end, int minutes, Draft draft) {
    int latest = end;
    for (int errand : errands) {
      if (draft.placed[errand] && run.dish().food()
          && isAlone(draft.start[errand], draft.end[errand], runs.runs().get(errand))) {
        int out = draft.start[errand];
        int begins = latest - minutes;
        boolean isLeft = isWatched(run) && begins < draft.end[errand] && out < latest;
        boolean isMissed = out < begins && begins < draft.end[errand];
        latest = isLeft ? out : isMissed ? out + minutes : latest;
      }
    }
    return latest;
  }

  private static boolean isWatched(Run run) {
    return run.footing().cooks() && !run.step().unattended();
  }

  /** Whether no more cooks are in hours for some of a stretch than the errand takes. */
  private boolean isAlone(int from, int to, Run errand) {
    long there = runs.event()
        .cooks()
        .stream()
        .filter(cook -> cook.hours().stream().anyMatch(each -> each.from() <= from && to <= each.to()))
        .count();
    return there <= errand.hands().stream().mapToInt(HandsNeed::cooks).max().orElse(0);
  }

  /** Notes on the draft each errand on which somebody goes who is needed. */
  void check(Draft draft) {
    if (errands.length == 0) {
      return;
    }
    Presence home = home(draft);
    int[] moments = null;
    for (int errand : errands) {
      for (int i = 0; i < draft.handsOf(errand); i++) {
        Crew.Taken out = draft.hands(errand, i);
        if (home.covers(out.from(), out.to())) {
          continue;
        }
        moments = moments == null ? moments(draft) : moments;
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
      Presence here = Crew.there(List.of(cooks.get(cook)));
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
    IntStream.Builder carried = IntStream.builder();
    carrying.each(draft, carried);
    return IntStream.concat(carried.build(), ovens).distinct().toArray();
  }
}
