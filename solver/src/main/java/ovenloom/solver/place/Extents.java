package ovenloom.solver.place;

import java.util.List;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.life.BakeMinutes;
import ovenloom.model.life.Cards;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Link;
import ovenloom.model.menu.Work;
import ovenloom.solver.timeline.Presence;

/**
 * Between which minutes each step must lie in every plan there is: after what goes before it, before what follows and the table, and
 * no sooner than its food keeps. Nothing else that a plan needs is looked at, so that no plan lies outside.
 */
public final class Extents {

  private final Runs runs;
  private final Bonds bonds;
  private final Wants wants;
  private final LongestWaits longest;
  private final int[] least;
  private final int[] most;
  private final int[] earliest;
  private final int[] latest;
  private final Presence there;
  private final Presence working;
  private boolean isChanged;

  private Extents(Runs runs) {
    this.runs = runs;
    bonds = new Bonds(runs);
    Floor floor = new Floor(runs);
    wants = new Wants(runs, floor);
    longest = new LongestWaits(runs, floor);
    least = runs.runs().stream().mapToInt(wants::leastMinutes).toArray();
    most = runs.runs().stream().mapToInt(wants::mostMinutes).toArray();
    earliest = runs.runs().stream().mapToInt(this::begins).toArray();
    latest = runs.runs().stream().mapToInt(Extents::ends).toArray();
    there = Crew.there(runs.event().cooks());
    working = working(runs.event());
    do {
      isChanged = false;
      runs.runs().forEach(this::tighten);
      runs.runs().reversed().forEach(this::tighten);
    } while (isChanged && isPossible());
  }

  /** Of an event, each batch by itself. */
  public static Extents of(Event event) {
    return new Extents(Runs.of(event, new BakeMinutes(new Cards(Work.of(event))), step -> 1));
  }

  /** When somebody is in hours and at no break. */
  private static Presence working(Event event) {
    Presence working = Presence.never();
    for (Cook cook : event.cooks()) {
      working = working.and(Crew.atWork(cook));
    }
    return working;
  }

  private int begins(Run run) {
    int begins = Math.max(runs.event().from(), run.notBefore());
    return run.step().serve() ? Math.max(begins, run.due()) : begins;
  }

  private static int ends(Run run) {
    return run.step().serve() ? run.endOfService() : run.due();
  }

  private void tighten(Run run) {
    int i = run.index();
    whenSomebodyIsThere(run);
    for (Tie tie : bonds.after(i)) {
      Link link = tie.link();
      int next = tie.later();
      int starts = latest[next] - least[next];
      switch (link.kind()) {
        case ORDER_ONLY -> {
          endBy(i, starts - link.least());
          startFrom(next, earliest[i] + least[i] + link.least());
        }
        case FOOD -> {
          endBy(i, starts - link.least());
          startFrom(next, earliest[i] + least[i] + link.least());
          int gap = longest.gap(link, i);
          startFrom(i, earliest[next] - gap - most[i]);
          endBy(next, latest[i] + gap + most[next]);
        }
        case ALONGSIDE -> {
          endBy(i, starts + most[i]);
          startFrom(next, earliest[i]);
        }
      }
    }
    for (int wait : bonds.waits(i)) {
      for (Wait.Taker taker : runs.waits().get(wait).takers()) {
        if (taker.run() == Wait.TABLE) {
          startFrom(i, taker.due() - longest.of(i) - most[i]);
        }
      }
    }
  }

  /** Later, and sooner, where nobody is there for what it needs at once. */
  private void whenSomebodyIsThere(Run run) {
    int i = run.index();
    int first = earliest[i];
    int last = latest[i] - least[i];
    while (first <= last && !mayBegin(run, first)) {
      first++;
    }
    while (first <= last && !mayBegin(run, last)) {
      last--;
    }
    startFrom(i, first);
    if (least[i] == most[i]) {
      endBy(i, last + least[i]);
    }
  }

  /** Whether somebody is there for a run that starts at a minute, for its heat and for its hands. */
  public boolean mayBegin(Run run, int start) {
    int minutes = least[run.index()];
    boolean watched = !run.footing().cooks() || run.step().unattended()
        || there.covers(start, start + minutes);
    return watched && (minutes != most[run.index()]
        || run.hands().stream().allMatch(need -> isDone(need, start, minutes)));
  }

  private boolean isDone(HandsNeed need, int start, int minutes) {
    int from = start + need.offset(minutes);
    return IntStream.rangeClosed(-need.slip(), need.slip())
        .anyMatch(slip -> working.covers(from + slip, from + slip + need.lasting(minutes)));
  }

  private void startFrom(int run, int minute) {
    if (minute > earliest[run]) {
      earliest[run] = minute;
      isChanged = true;
    }
  }

  private void endBy(int run, int minute) {
    if (minute < latest[run]) {
      latest[run] = minute;
      isChanged = true;
    }
  }

  /** Whether each step has room in its own extent. */
  public boolean isPossible() {
    return runs.runs().stream().allMatch(run -> room(run.index()) >= 0);
  }

  private int room(int run) {
    return latest[run] - earliest[run] - least[run];
  }

  /** The runs they are of, one for each step of the work. */
  public List<Run> runs() {
    return runs.runs();
  }

  /** The first minute in which a run may begin. */
  public int earliest(int run) {
    return earliest[run];
  }

  /** The minute by which it must have ended. */
  public int latest(int run) {
    return latest[run];
  }

  /** The fewest minutes it takes. */
  public int least(int run) {
    return least[run];
  }

  /** The most minutes it may take. */
  public int most(int run) {
    return most[run];
  }

  /** What they are, laid out each batch by itself. */
  public Runs laidOut() {
    return runs;
  }

  /** Every way to bake a run, from whatever start; none for one that is no bake. */
  public List<BakeChoice> waysToBake(int run) {
    return wants.waysToBake(runs.runs().get(run)).toList();
  }

  /** How long the food of a tie keeps at most, from the end of the earlier run to the start of the later. */
  public int longestGap(Tie tie) {
    return longest.gap(tie.link(), tie.earlier());
  }

  /** How long the food of a run keeps at most, wherever it waits. */
  public int longestWait(int run) {
    return longest.of(run);
  }

  /** Whether food may wait on its burner, or in its oven. */
  public boolean mayStayOnTheHeat(Wait wait) {
    return longest.mayStayOnTheHeat(wait);
  }

  /** The stores in which food keeps and its vessels fit, by their numbers in the kitchen. */
  public List<Integer> stores(Wait wait) {
    return longest.stores(wait);
  }
}
