package ovenloom.solver.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.solver.timeline.CookTimeline;
import ovenloom.solver.timeline.Presence;
import ovenloom.solver.timeline.Timeline;

/** All cooks, over time: who is free for which hands. */
public final class Crew {

  private final List<Cook> cooks;
  private final CookTimeline[] timelines;
  private final int[] busy;
  private final Presence there;
  private int blocker = Timeline.NOBODY;

  Crew(List<Cook> cooks, int from, int to) {
    this.cooks = cooks;
    timelines = new CookTimeline[cooks.size()];
    busy = new int[cooks.size()];
    there = there(cooks);
    for (int i = 0; i < timelines.length; i++) {
      timelines[i] = new CookTimeline(from, to, atWork(cooks.get(i)));
    }
  }

  /** When a cook is in hours and at no break. */
  static Presence atWork(Cook cook) {
    Presence hours = there(List.of(cook));
    for (Stretch pause : cook.breaks()) {
      hours = hours.except(pause.from(), pause.to());
    }
    return hours;
  }

  /** When at least one of some cooks is in hours; a break counts as there. */
  static Presence there(List<Cook> cooks) {
    Presence there = Presence.never();
    for (Cook cook : cooks) {
      for (Stretch stretch : cook.hours()) {
        there = there.and(stretch.from(), stretch.to());
      }
    }
    return there;
  }

  /** When at least one of them is in hours. */
  Presence there() {
    return there;
  }

  /** The latest start of a run, not after this one, at which each of some hands is free; or NONE. */
  int latestStart(int notAfter, List<HandsNeed> hands, int minutes, int door) {
    int start = notAfter;
    int whose = Timeline.NOBODY;
    for (HandsNeed need : hands) {
      int latest = start == Timeline.NONE ? start : latestFor(start, need, minutes, door);
      whose = latest < start ? blocker : whose;
      start = latest;
    }
    blocker = whose;
    return start;
  }

  private int latestFor(int start, HandsNeed need, int minutes, int door) {
    int latest = latestWithoutSlip(start, need, minutes, door, 0);
    int whose = blocker;
    for (int slip = 1; slip <= need.slip() && latest < start; slip++) {
      latest = Math.max(latest, latestWithoutSlip(start, need, minutes, door, slip));
      latest = Math.max(latest, latestWithoutSlip(start, need, minutes, door, -slip));
    }
    blocker = whose;
    return Math.min(latest, start);
  }

  private int latestWithoutSlip(int start, HandsNeed need, int minutes, int door, int slip) {
    int offset = need.offset(minutes) + slip;
    int lasting = need.lasting(minutes);
    blocker = Timeline.HOURS;
    if (offset < 0 || offset + lasting > minutes || need.cooks() > timelines.length) {
      return Timeline.NONE;
    }
    int tag = tag(need, door);
    int enough = need.cooks() == 1 ? latestOfOne(start + offset, lasting, tag, need.skill())
        : latestOfSeveral(start + offset, lasting, tag, need);
    return enough == Timeline.NONE ? enough : enough - offset;
  }

  private int latestOfOne(int from, int lasting, int tag, @Nullable String skill) {
    int best = Timeline.NONE;
    for (int i = 0; i < timelines.length && best < from; i++) {
      if (has(i, skill)) {
        int latest = timelines[i].latestStartFor(from, lasting, tag);
        blocker = latest >= best ? timelines[i].blocker() : blocker;
        best = Math.max(best, latest);
      }
    }
    return best;
  }

  private int latestOfSeveral(int from, int lasting, int tag, HandsNeed need) {
    int[] latest = new int[timelines.length];
    int skilled = need.skill() == null ? Integer.MAX_VALUE : Timeline.NONE;
    for (int i = 0; i < timelines.length; i++) {
      latest[i] = timelines[i].latestStartFor(from, lasting, tag);
      if (has(i, need.skill())) {
        skilled = Math.max(skilled, latest[i]);
      }
    }
    int[] inOrder = latest.clone();
    Arrays.sort(inOrder);
    int enough = Math.min(skilled, inOrder[inOrder.length - need.cooks()]);
    for (int i = 0; i < timelines.length; i++) {
      blocker = latest[i] == enough ? timelines[i].blocker() : blocker;
    }
    return enough;
  }

  /**
   * Takes hands for a need of a run that starts at a moment.
   *
   * @param door the oven's number; loads and unloads of one oven at one minute share it
   * @return when they begin and who they are, or null if nobody is free
   */
  @Nullable
  Taken take(int start, Run run, HandsNeed need, int minutes, int door) {
    for (int slip = 0; slip <= need.slip(); slip++) {
      Taken taken = take(start + need.offset(minutes) + slip, run, need, minutes, door, start);
      if (taken == null && slip > 0) {
        taken = take(start + need.offset(minutes) - slip, run, need, minutes, door, start);
      }
      if (taken != null) {
        return taken;
      }
    }
    return null;
  }

  /** Hands that were taken. */
  public record Taken(int from, int to, List<Integer> cooks) {

    public Taken {
      cooks = List.copyOf(cooks);
    }
  }

  private @Nullable Taken take(int from, Run run, HandsNeed need, int minutes, int door, int start) {
    int to = from + need.lasting(minutes);
    if (from < start || to > start + minutes) {
      return null;
    }
    int tag = tag(need, door);
    List<Integer> chosen = new ArrayList<>();
    if (need.skill() != null) {
      choose(chosen, from, to, tag, need.skill());
      if (chosen.isEmpty()) {
        return null;
      }
    }
    while (chosen.size() < need.cooks()) {
      int before = chosen.size();
      choose(chosen, from, to, tag, null);
      if (chosen.size() == before) {
        return null;
      }
    }
    for (int cook : chosen) {
      if (tag == CookTimeline.ALONE) {
        timelines[cook].take(from, to, run.index());
      } else {
        timelines[cook].takeShared(from, to, run.index(), tag);
      }
      busy[cook] += to - from;
    }
    return new Taken(from, to, chosen);
  }

  /** Adds whoever has the door open already, else whoever has done least so far. */
  private void choose(List<Integer> chosen, int from, int to, int tag, @Nullable String skill) {
    int best = -1;
    boolean bestIsThere = false;
    for (int i = 0; i < timelines.length; i++) {
      boolean free = timelines[i].isFreeFor(from, to, tag);
      if (!free || chosen.contains(i) || !has(i, skill)) {
        continue;
      }
      boolean there = !timelines[i].isFree(from, to);
      boolean better = best < 0 || (there && !bestIsThere) || (there == bestIsThere && busy[i] < busy[best]);
      if (better) {
        best = i;
        bestIsThere = there;
      }
    }
    if (best >= 0) {
      chosen.add(best);
    }
  }

  private static int tag(HandsNeed need, int door) {
    return need.isDoor() ? door : CookTimeline.ALONE;
  }

  private boolean has(int cook, @Nullable String skill) {
    return skill == null || cooks.get(cook).skills().contains(skill);
  }

  /** The latest start, not after this one, of a wash; or NONE. */
  int latestWash(int notAfter, int minutes) {
    int latest = Timeline.NONE;
    for (CookTimeline cook : timelines) {
      latest = Math.max(latest, cook.latestStart(notAfter, minutes));
    }
    return latest;
  }

  /** Whether somebody is at work, or out of hours, in some of these minutes. */
  boolean isAnyoneAtWork(int from, int to) {
    for (CookTimeline cook : timelines) {
      if (!cook.isFree(from, to)) {
        return true;
      }
    }
    return false;
  }

  /** Takes somebody who is free to wash up. */
  int takeForWash(int from, int minutes) {
    for (int i = 0; i < timelines.length; i++) {
      if (timelines[i].isFree(from, from + minutes)) {
        timelines[i].take(from, from + minutes, Timeline.HOURS);
        return i;
      }
    }
    throw new IllegalStateException("nobody is free to wash up at " + from);
  }

  int blocker() {
    return blocker;
  }

  /** A point to come back to. */
  int[] marks() {
    int[] marks = Arrays.copyOf(busy, 2 * busy.length);
    for (int i = 0; i < timelines.length; i++) {
      marks[busy.length + i] = timelines[i].mark();
    }
    return marks;
  }

  void rollback(int[] marks) {
    System.arraycopy(marks, 0, busy, 0, busy.length);
    for (int i = 0; i < timelines.length; i++) {
      timelines[i].rollback(marks[busy.length + i]);
    }
  }

  void clear() {
    Arrays.fill(busy, 0);
    for (CookTimeline cook : timelines) {
      cook.clear();
    }
  }
}
