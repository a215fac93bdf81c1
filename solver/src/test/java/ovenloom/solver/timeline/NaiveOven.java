package ovenloom.solver.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** An oven looked at minute by minute, to hold its timeline against. */
final class NaiveOven {

  record Taken(int start, Bake bake, int owner) {

    int end() {
      return start + bake.minutes();
    }

    boolean isInside(int minute) {
      return start <= minute && minute < end();
    }

    int settingAt(int minute) {
      int stage = 0;
      while (stage + 1 < bake.stages() && start + bake.from(stage + 1) <= minute) {
        stage++;
      }
      return bake.setting(stage);
    }
  }

  private static final int LONGEST_CHANGE = 20;

  private final int from;
  private final int to;
  private final OvenHeat heat;
  private final Presence open;
  private final Presence someone;
  private final List<Taken> taken = new ArrayList<>();

  NaiveOven(int from, int to, OvenHeat heat, Presence open, Presence someone) {
    this.from = from;
    this.to = to;
    this.heat = heat;
    this.open = open;
    this.someone = someone;
  }

  void take(int start, Bake bake, int owner) {
    taken.add(new Taken(start, bake, owner));
  }

  void rollback(int mark) {
    taken.subList(mark, taken.size()).clear();
  }

  int count() {
    return taken.size();
  }

  int latestStart(int notAfter, Bake bake) {
    for (int start = notAfter; start >= from; start--) {
      if (fits(start, bake)) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  boolean fits(int start, Bake bake) {
    List<Taken> all = new ArrayList<>(taken);
    all.add(new Taken(start, bake, 0));
    return start + bake.minutes() <= to
        && all.stream().allMatch(each -> isOpen(each.start, each.end()))
        && allOnOneDial(all)
        && all.stream().allMatch(each -> isReadyFor(each, all) && isLeftInPeace(each, all));
  }

  private boolean isOpen(int start, int end) {
    for (int minute = start; minute < end; minute++) {
      if (minute < from || !open.covers(minute, minute + 1)) {
        return false;
      }
    }
    return true;
  }

  private boolean allOnOneDial(List<Taken> all) {
    for (int minute = from; minute < to; minute++) {
      int now = minute;
      List<Taken> inside = all.stream().filter(each -> each.isInside(now)).toList();
      if (inside.stream().mapToInt(each -> each.settingAt(now)).distinct().count() > 1
          || inside.stream()
              .anyMatch(
                  one -> inside.stream().anyMatch(each -> !each.equals(one) && one.bake.avoids(each.bake)))) {
        return false;
      }
    }
    return true;
  }

  /** Looks back from the minute it goes in. */
  private boolean isReadyFor(Taken bake, List<Taken> all) {
    int wanted = bake.bake.setting(0);
    for (int back = 1; back <= LONGEST_CHANGE; back++) {
      int minute = bake.start - back;
      for (Taken other : all) {
        if (other.isInside(minute) && other.settingAt(minute) != wanted
            && heat.change(other.settingAt(minute), wanted) > back - 1) {
          return false;
        }
      }
    }
    int last = bake.start - 1;
    boolean morning = false;
    while (last >= from && !isInUse(last, all)) {
      morning |= Math.floorMod(last, 1440) == 240;
      last--;
    }
    int empty = last + 1;
    if (last >= from && empty == bake.start) {
      return true;
    }
    if (last >= from && !morning) {
      int before = settingAt(last, all);
      if (before == Bake.OFF) {
        return isSwitchedOnAgain(bake, wanted, last, all);
      }
      return isOpen(empty, bake.start)
          || isOpen(bake.start - heat.onBefore(before, wanted, empty, bake.start), bake.start);
    }
    int on = bake.start - heat.fromRoom(wanted);
    return on >= empty && isOpen(on, bake.start) && someone.openAt(on);
  }

  /** After food was left in it, off. */
  private boolean isSwitchedOnAgain(Taken bake, int wanted, int last, List<Taken> all) {
    int lit = last;
    boolean morning = false;
    while (settingAt(lit, all) == Bake.OFF) {
      morning |= Math.floorMod(lit, 1440) == 240;
      lit--;
    }
    int on = bake.start
        - (morning ? heat.fromRoom(wanted) : heat.preheat(settingAt(lit, all), wanted, bake.start - lit - 1));
    return isOpen(on, bake.start) && someone.openAt(on);
  }

  private static int settingAt(int minute, List<Taken> all) {
    return all.stream().filter(each -> each.isInside(minute)).findFirst().orElseThrow().settingAt(minute);
  }

  private static boolean isInUse(int minute, List<Taken> all) {
    return all.stream().anyMatch(each -> each.isInside(minute));
  }

  private static boolean isLeftInPeace(Taken bake, List<Taken> all) {
    int low = bake.start + bake.bake.load();
    int high = bake.end() - bake.bake.unload();
    int shut = Math.min(high, bake.start + bake.bake.shutTo());
    TreeMap<Integer, Integer> inAndOut = new TreeMap<>();
    List<int[]> openings = new ArrayList<>();
    for (Taken other : all) {
      for (int i = 0; !other.equals(bake) && i < other.bake.openings(); i++) {
        int at = other.start + other.bake.opensAt(i);
        int until = at;
        while (other.bake.opensWithin(other.start, i, until, until + 1)) {
          until++;
        }
        if (i < Bake.IN_AND_OUT) {
          inAndOut.merge(at, until, Math::max);
        } else {
          openings.add(new int[]{at, until});
        }
      }
    }
    inAndOut.forEach((at, until) -> openings.add(new int[]{at, until}));
    long seen = openings.stream().filter(each -> low < high && each[0] < high && low < each[1]).count();
    boolean opened = openings.stream().anyMatch(each -> low < shut && each[0] < shut && low < each[1]);
    return seen <= 2 && !opened;
  }
}
