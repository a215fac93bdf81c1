package ovenloom.solver.place;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ovenloom.solver.timeline.Timeline;

/** Fits one run into what is placed: chooses how it is baked and when it starts, and takes what it needs. */
final class Fitting {

  /** Minutes of being earlier that one point of a setting is worth, when the decoder chooses a mark. */
  private static final int MINUTES_A_POINT = 10;

  private static final int TRIES_TO_WASH = 24;

  private final Floor floor;
  private final Draft draft;
  private final Wants wants;
  private final Vacancy vacancy;
  private final Claims claims;
  private final Clock clock;

  Fitting(Runs runs, Floor floor, Draft draft, Bonds bonds) {
    this.floor = floor;
    this.draft = draft;
    wants = new Wants(runs, floor);
    vacancy = new Vacancy(floor, wants, new Leads(runs, bonds, wants, new LongestWaits(runs, floor)));
    claims = new Claims(runs, floor, draft, wants, bonds);
    clock = new Clock(runs, draft, bonds);
  }

  List<BakeChoice> waysToBake(Run run) {
    return wants.bakes(run);
  }

  int starts(Run run) {
    return wants.starts(run);
  }

  /**
   * The start, by number, in which a bake takes the fewest minutes that are enough, of those that food so cold may have; of all, if none of
   * these takes few enough; {@link Decisions#OPEN} if none is enough.
   *
   * @param celsius how cold the food goes in
   * @param needed minutes that it needs so
   * @param longest that it may take
   */
  int startFor(Run run, BakeChoice choice, double celsius, int needed, int longest) {
    int found = Decisions.OPEN;
    long fewest = Long.MAX_VALUE;
    for (int start = 0; start < wants.starts(run); start++) {
      for (BakeChoice other : wants.bakes(run, start)) {
        boolean fits = other.admits(celsius) && other.minutes() <= longest;
        long minutes = other.minutes() + (fits ? 0L : Integer.MAX_VALUE);
        if (other.isAt(choice) && other.minutes() >= needed && minutes < fewest) {
          fewest = minutes;
          found = start;
        }
      }
    }
    return found;
  }

  /** The fewest minutes it may take. */
  int leastMinutes(Run run) {
    return wants.leastMinutes(run);
  }

  /**
   * Places a run as late as it fits with its end not after a moment.
   *
   * @param from how cold it goes in, by number, or below 0
   * @param wanted the way to bake it so, or below 0
   * @param stay of its food in its oven; null if it is to be taken out
   */
  void place(Run run, int latestEnd, int from, int wanted, @Nullable OvenStay stay) {
    Found found = find(run, latestEnd, from, wanted, stay);
    if (found.start() == Timeline.NONE && stay != null) {
      found = find(run, latestEnd, from, wanted, null);
    }
    settle(found.request(), found.start(), latestEnd - found.request().minutes());
    draft.blocker[run.index()] = found.blocker();
    draft.scarce[run.index()] = found.scarce();
  }

  /** The latest end of a run, not after a moment, if it were placed now; NONE where it does not fit. */
  int latestEnd(Run run, int latestEnd, int from, int wanted) {
    Found found = find(run, latestEnd, from, wanted, null);
    return found.start() == Timeline.NONE ? Timeline.NONE : found.start() + found.request().minutes();
  }

  private record Found(Request request, int start, int blocker, @Nullable Scarce scarce) {}

  private Found find(Run run, int latestEnd, int from, int wanted, @Nullable OvenStay stay) {
    List<BakeChoice> all = wants.bakes(run, from);
    if (!run.footing().bakes()) {
      return find(Request.of(run, null), latestEnd);
    }
    Found best = new Found(Request.of(run, null), Timeline.NONE, Timeline.NOBODY, Scarce.OVENS);
    for (int i = 0; i < all.size(); i++) {
      BakeChoice choice = all.get(i);
      boolean asked = wanted < 0
          ? choice.asWritten() || floor.dials[choice.oven()].uses(choice.bake().setting(0))
          : i == wanted % all.size();
      if (asked) {
        Found found = find(new Request(run, choice, stay), latestEnd);
        best = isBetter(found, best) ? found : best;
      }
    }
    return best;
  }

  private Found find(Request request, int latestEnd) {
    int start = vacancy.latestStart(request, latestEnd - request.minutes());
    return new Found(request, start, vacancy.blocker(), vacancy.scarcest());
  }

  private static boolean isBetter(Found found, Found best) {
    BakeChoice choice = best.request().choice();
    if (choice == null || found.start() == Timeline.NONE) {
      return choice == null;
    }
    BakeChoice other = Objects.requireNonNull(found.request().choice());
    return best.start() == Timeline.NONE || worth(found.start(), other) > worth(best.start(), choice);
  }

  private static int worth(int start, BakeChoice choice) {
    return start - MINUTES_A_POINT * choice.points();
  }

  /** Serves a run as soon as it fits, not before a moment. */
  void serve(Run run, int notBefore) {
    List<BakeChoice> all = wants.bakes(run);
    Request request = Request.of(run, all.isEmpty() ? null : all.getFirst());
    for (int start = notBefore; start + request.minutes() <= run.endOfService(); start++) {
      if (vacancy.latestStart(request, start) == start && claims.take(request, start)) {
        return;
      }
    }
    force(request, run.due());
  }

  private void settle(Request request, int start, int notAfter) {
    int on = start == Timeline.NONE ? start : onTheClock(request, start);
    for (int tries = 0; tries < TRIES_TO_WASH && on != Timeline.NONE; tries++) {
      if (claims.take(request, on)) {
        return;
      }
      on = vacancy.latestStart(request, on - clock.step());
    }
    force(request, notAfter);
  }

  /** Nothing fits: puts it where it would like to be and takes nothing. */
  private void force(Request request, int start) {
    Run run = request.run();
    int at = Math.max(start, floor.from);
    draft.start[run.index()] = at;
    draft.end[run.index()] = at + request.minutes();
    draft.choice[run.index()] = request.choice() == null && !wants.bakes(run).isEmpty()
        ? wants.bakes(run).getFirst()
        : request.choice();
    draft.fallsShort(run.index(), request.minutes() + Math.max(0, floor.from - start));
  }

  private int onTheClock(Request request, int start) {
    int on = clock.down(request, start);
    return on == start || vacancy.latestStart(request, on) == on ? on : start;
  }

  /** Lets a run that waits by itself begin sooner, as far as it may, where its place is free. */
  void beginSooner(Run run, int from) {
    int i = run.index();
    int was = draft.start[i];
    int start = Math.max(from, draft.end[i] - run.most());
    boolean sooner = start < was && start >= Math.max(floor.from, run.notBefore())
        && floor.crew.there().openAt(start);
    if (sooner && claims.takeSooner(run, start)) {
      draft.start[i] = start;
    }
  }
}
