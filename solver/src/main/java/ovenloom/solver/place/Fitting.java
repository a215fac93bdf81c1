package ovenloom.solver.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.solver.timeline.Timeline;

/** Fits one run into what is placed: chooses how it is baked and when it starts, and takes what it needs. */
final class Fitting {

  /** Minutes of being earlier that one point of a setting is worth, when the decoder chooses a mark. */
  private static final int MINUTES_A_POINT = 10;

  private static final int TRIES_TO_WASH = 24;

  private final Runs runs;
  private final Floor floor;
  private final Draft draft;
  private final Wants wants;
  private final Vacancy vacancy;
  private final Claims claims;
  private final int clock;

  Fitting(Runs runs, Floor floor, Draft draft) {
    this.runs = runs;
    this.floor = floor;
    this.draft = draft;
    wants = new Wants(runs, floor);
    vacancy = new Vacancy(floor, wants);
    claims = new Claims(runs, floor, draft, wants);
    clock = runs.event().clock();
  }

  List<BakeChoice> waysToBake(Run run) {
    return wants.bakes(run);
  }

  /** Places a run as late as it fits with its end not after a moment. */
  void place(Run run, int latestEnd, int wanted) {
    int minutes = run.minutes();
    int notAfter = latestEnd - minutes;
    List<BakeChoice> all = wants.bakes(run);
    @Nullable
    BakeChoice best = null;
    int bestStart = Timeline.NONE;
    int bestBlocker = Timeline.NOBODY;
    if (all.isEmpty()) {
      bestStart = !run.footing().bakes() ? vacancy.latestStart(run, null, notAfter) : Timeline.NONE;
      bestBlocker = vacancy.blocker();
    }
    for (int i = 0; i < all.size(); i++) {
      BakeChoice choice = all.get(i);
      boolean asked = wanted < 0
          ? choice.asWritten() || floor.dials[choice.oven()].uses(choice.bake().setting(0))
          : i == wanted % all.size();
      if (asked) {
        int start = vacancy.latestStart(run, choice, notAfter);
        if (start != Timeline.NONE && (best == null || worth(start, choice) > worth(bestStart, best))) {
          best = choice;
          bestStart = start;
          bestBlocker = vacancy.blocker();
        }
      }
    }
    settle(run, best, bestStart, notAfter);
    draft.blocker[run.index()] = bestBlocker;
  }

  private static int worth(int start, BakeChoice choice) {
    return start - MINUTES_A_POINT * choice.points();
  }

  /** Serves a run as soon after its table time as it fits, and no sooner than the batch before it lets it. */
  void serve(Run run, int notBefore) {
    List<BakeChoice> all = wants.bakes(run);
    @Nullable
    BakeChoice choice = all.isEmpty() ? null : all.getFirst();
    for (int start = Math.max(run.due(), notBefore); start + run.minutes() <= run.endOfService(); start++) {
      if (vacancy.latestStart(run, choice, start) == start) {
        settle(run, choice, start, start);
        return;
      }
    }
    settle(run, choice, Timeline.NONE, run.due());
  }

  private void settle(Run run, @Nullable BakeChoice choice, int start, int notAfter) {
    int on = start == Timeline.NONE ? start : onTheClock(run, choice, start);
    for (int tries = 0; tries < TRIES_TO_WASH && on != Timeline.NONE; tries++) {
      if (claims.take(run, choice, on)) {
        return;
      }
      on = run.step().serve() ? Timeline.NONE : vacancy.latestStart(run, choice, on - clock);
    }
    force(run, choice, notAfter);
  }

  /** Nothing fits: puts it where it would like to be and takes nothing. */
  private void force(Run run, @Nullable BakeChoice choice, int start) {
    int at = Math.max(start, floor.from);
    draft.start[run.index()] = at;
    draft.end[run.index()] = at + run.minutes();
    draft.choice[run.index()] = choice == null && !wants.bakes(run).isEmpty()
        ? wants.bakes(run).getFirst()
        : choice;
    draft.fallsShort(run.index(), run.minutes() + Math.max(0, floor.from - start));
  }

  /** A whole step of the clock, if that fits as well and nothing is kept waiting that could not be before. */
  private int onTheClock(Run run, @Nullable BakeChoice choice, int start) {
    int on = Math.floorDiv(start, clock) * clock;
    if (on == start || run.step().serve()) {
      return start;
    }
    for (Tie tie : runs.ties()) {
      Integer most = tie.link().most();
      if (tie.earlier() == run.index() && most != null
          && draft.start[tie.later()] - on - run.minutes() > most) {
        return start;
      }
    }
    return vacancy.latestStart(run, choice, on) == on ? on : start;
  }

  /** Lets a run that waits by itself begin sooner, as far as it may, where its place is free. */
  void beginSooner(Run run, int from) {
    int i = run.index();
    int was = draft.start[i];
    int start = Math.max(from, draft.end[i] - run.most());
    boolean sooner = start < was && start >= floor.from && floor.crew.there().openAt(start);
    if (sooner && claims.takeSooner(run, start)) {
      draft.start[i] = start;
    }
  }
}
