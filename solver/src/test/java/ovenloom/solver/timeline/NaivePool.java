package ovenloom.solver.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A pool kept minute by minute, to hold the timelines against. */
final class NaivePool {

  record Taken(int from, int to, int demand, int owner) {}

  private final int from;
  private final int[] base;
  private final List<Taken> taken = new ArrayList<>();

  NaivePool(int from, int to, int capacity) {
    this.from = from;
    base = new int[to - from];
    Arrays.fill(base, capacity);
  }

  void reduce(int start, int end, int by) {
    for (int moment = start; moment < end; moment++) {
      if (inside(moment)) {
        base[moment - from] -= by;
      }
    }
  }

  void take(int start, int end, int demand, int owner) {
    taken.add(new Taken(start, end, demand, owner));
  }

  void clear() {
    taken.clear();
  }

  int mark() {
    return taken.size();
  }

  void rollback(int mark) {
    taken.subList(mark, taken.size()).clear();
  }

  boolean inside(int moment) {
    return from <= moment && moment < from + base.length;
  }

  int freeAt(int moment) {
    return inside(moment) ? base[moment - from] - takenAt(moment) : Math.min(0, -takenAt(moment));
  }

  private int takenAt(int moment) {
    return taken.stream()
        .filter(t -> t.from() <= moment && moment < t.to())
        .mapToInt(Taken::demand)
        .sum();
  }

  boolean fits(int start, int end, int demand) {
    for (int moment = start; moment < end; moment++) {
      if (!inside(moment) || freeAt(moment) < demand) {
        return false;
      }
    }
    return from <= start && end <= from + base.length;
  }

  int latestStart(int notAfter, int duration, int demand) {
    for (int start = notAfter; start >= from; start--) {
      if (fits(start, start + duration, demand)) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  int earliestStart(int notBefore, int duration, int demand) {
    for (int start = notBefore; start <= from + base.length; start++) {
      if (fits(start, start + duration, demand)) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  /** Whether this owner, or the hours where the owner is HOURS, is in the way at that minute. */
  boolean isInTheWay(int owner, int moment, int demand) {
    boolean never = !inside(moment) || base[moment - from] < demand;
    return owner == Timeline.HOURS
        ? never
        : !never
            && freeAt(moment) < demand
            && taken.stream()
                .anyMatch(t -> t.owner() == owner && t.from() <= moment && moment < t.to());
  }
}
