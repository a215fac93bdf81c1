package ovenloom.solver.place;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import ovenloom.model.menu.BatchLink;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.safety.Allergens;

/**
 * Work that leaves traces of an allergen, and work that must be free of it. Who comes first shows when all runs are placed; the
 * search finds its way to an order that is well.
 */
final class Traces {

  private final Runs runs;
  private final int[][] leavers;
  private final int[][] cleanDowns;

  Traces(Runs runs) {
    this.runs = runs;
    List<Set<String>> left = left(runs.work());
    List<Set<String>> spared = spared(runs.work());
    leavers = runs.runs().stream().map(run -> leavers(run, spared, left)).toArray(int[][]::new);
    cleanDowns = runs.event()
        .dishes()
        .stream()
        .filter(dish -> !dish.food() && Allergens.areCleanedAwayBy(dish.tags()))
        .map(dish -> indices(run -> run.dish().equals(dish)))
        .toArray(int[][]::new);
  }

  private int[] leavers(Run run, List<Set<String>> spared, List<Set<String>> left) {
    return isWork(run) ? indices(other -> isWork(other) && meet(run, spared, other, left)) : new int[0];
  }

  private int[] indices(Predicate<Run> which) {
    return runs.runs().stream().filter(which).mapToInt(Run::index).toArray();
  }

  private static boolean isWork(Run run) {
    return run.hands().stream().anyMatch(need -> need.act() == HandsOn.Act.WORK);
  }

  private static boolean meet(Run run, List<Set<String>> spared, Run other, List<Set<String>> left) {
    for (BatchStep one : run.units()) {
      for (BatchStep each : other.units()) {
        if (!Collections.disjoint(spared.get(one.index()), left.get(each.index()))) {
          return true;
        }
      }
    }
    return false;
  }

  /** What each step leaves on board and knife: what its dish has, and what comes along with its food. */
  private static List<Set<String>> left(Work work) {
    List<Set<String>> left = work.steps()
        .stream()
        .<Set<String>>map(step -> new HashSet<>(Allergens.in(step.dish().tags())))
        .toList();
    for (int step = 0; step < left.size(); step++) {
      for (BatchLink link : work.outOf(step)) {
        if (link.carriesFood()) {
          left.get(link.to()).addAll(left.get(step));
        }
      }
    }
    return left;
  }

  /** What each step must be free of, for its own dish or for one that it goes into. */
  private static List<Set<String>> spared(Work work) {
    List<Set<String>> spared = work.steps()
        .stream()
        .<Set<String>>map(step -> new HashSet<>(Allergens.keptOutOf(step.dish().tags())))
        .toList();
    for (int step = spared.size() - 1; step >= 0; step--) {
      for (BatchLink link : work.outOf(step)) {
        if (link.carriesFood()) {
          spared.get(step).addAll(spared.get(link.to()));
        }
      }
    }
    return spared;
  }

  /**
   * When a run that could end at a minute has to, to be done before such work as is placed already. After it and after a clean down
   * comes what is placed before either.
   */
  int latestEnd(Run run, int end, Draft draft) {
    int latest = end;
    for (int leaver : leavers[run.index()]) {
      int from = draft.placed[leaver] ? firstWork(draft, leaver) : latest;
      if (from < latest && day(from).equals(day(latest - 1))) {
        latest = Math.min(latest, from + rest(run));
      }
    }
    return latest;
  }

  private static int firstWork(Draft draft, int run) {
    int first = draft.end[run];
    for (int i = 0; i < draft.handsOf(run); i++) {
      first = isWork(draft, run, i) ? Math.min(first, draft.hands(run, i).from()) : first;
    }
    return first;
  }

  /** Minutes of a run after the last work on it. */
  private static int rest(Run run) {
    int last = 0;
    for (HandsNeed need : run.hands()) {
      last = need.isDoor() ? last : Math.max(last, need.offset(run.minutes()) + need.lasting(run.minutes()));
    }
    return run.minutes() - last;
  }

  private LocalDate day(int minute) {
    return runs.event().calendar().at(minute).toLocalDate();
  }

  /**
   * Notes on the draft all work that comes too late to be free of what it must be, as a plea of the other: who is placed sooner comes
   * later in the day.
   */
  void check(Draft draft) {
    for (int run = 0; run < leavers.length; run++) {
      for (int leaver : leavers[run]) {
        int off = off(draft, run, leaver);
        if (off > 0) {
          draft.fallsShort(leaver, off);
        }
      }
    }
  }

  /** Minutes by which the worst of its hands are too late after the other's. */
  private int off(Draft draft, int run, int leaver) {
    int off = 0;
    for (int i = 0; i < draft.handsOf(run); i++) {
      for (int j = 0; j < draft.handsOf(leaver); j++) {
        if (isWork(draft, run, i) && isWork(draft, leaver, j)) {
          off = Math.max(off, off(draft, draft.hands(run, i), draft.hands(leaver, j)));
        }
      }
    }
    return off;
  }

  private static boolean isWork(Draft draft, int run, int number) {
    return draft.handsNeeded(run).get(number).act() == HandsOn.Act.WORK;
  }

  /** By the nearest way out: before the other, or with a clean down between. */
  private int off(Draft draft, Crew.Taken clean, Crew.Taken other) {
    int off = clean.to() - other.from();
    if (off <= 0 || isOnALaterDay(clean, other)) {
      return 0;
    }
    for (int[] chore : cleanDowns) {
      int from = IntStream.of(chore).map(draft::start).min().orElseThrow();
      int to = IntStream.of(chore).map(draft::end).max().orElseThrow();
      off = Math.min(off, Math.max(0, other.to() - from) + Math.max(0, to - clean.from()));
    }
    return off;
  }

  private boolean isOnALaterDay(Crew.Taken clean, Crew.Taken other) {
    return day(other.to() - 1).isBefore(day(clean.from()));
  }
}
