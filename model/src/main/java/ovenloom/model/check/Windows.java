package ovenloom.model.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;

/** When cooks are there, and how long on end. */
final class Windows {

  private final List<Cook> cooks;
  private final Stretch time;

  /** Of these cooks, within this time. */
  Windows(List<Cook> cooks, Stretch time) {
    this.cooks = cooks;
    this.time = time;
  }

  /** The longest anyone is there, one after the other without a gap; breaks count. */
  int longestWithSomeone() {
    int longest = 0;
    int from = 0;
    int to = Integer.MIN_VALUE;
    for (Stretch next : sorted(cooks.stream().flatMap(cook -> cook.hours().stream()))) {
      from = next.from() <= to ? from : next.from();
      to = Math.max(to, next.to());
      longest = Math.max(longest, within(new Stretch(from, to)));
    }
    return longest;
  }

  /**
   * The longest that so many can work together without a break.
   *
   * @param skill one of them has it
   */
  int longestTogether(int wanted, @Nullable String skill) {
    List<Cook> able = skill == null ? cooks
        : cooks.stream().filter(cook -> cook.skills().contains(skill)).toList();
    int longest = 0;
    for (Cook one : able) {
      for (Stretch window : free(one)) {
        longest = Math.max(longest, longest(window, one, wanted - 1));
      }
    }
    return longest;
  }

  /** The longest part of one cook's window in which so many others are free from end to end. */
  private int longest(Stretch window, Cook one, int others) {
    if (others == 0) {
      return within(window);
    }
    List<Stretch> shared = new ArrayList<>();
    for (Cook other : cooks) {
      if (!other.equals(one)) {
        free(other).stream().filter(window::overlaps).forEach(free -> shared.add(clipped(free, window)));
      }
    }
    int longest = 0;
    for (Stretch first : shared) {
      List<Integer> ends = shared.stream()
          .filter(each -> each.from() <= first.from() && first.from() < each.to())
          .map(Stretch::to)
          .sorted(Comparator.reverseOrder())
          .toList();
      if (ends.size() >= others) {
        longest = Math.max(longest, within(new Stretch(first.from(), ends.get(others - 1))));
      }
    }
    return longest;
  }

  private int within(Stretch window) {
    Stretch inside = window.shared(time);
    return inside == null ? 0 : inside.minutes();
  }

  private static Stretch clipped(Stretch one, Stretch by) {
    return new Stretch(Math.max(one.from(), by.from()), Math.min(one.to(), by.to()));
  }

  /** Hours without breaks. */
  private List<Stretch> free(Cook cook) {
    List<Stretch> free = new ArrayList<>();
    for (Stretch hours : cook.hours()) {
      int from = hours.from();
      for (Stretch pause : sorted(cook.breaks().stream())) {
        if (pause.from() > from && pause.from() < hours.to()) {
          free.add(new Stretch(from, pause.from()));
        }
        from = pause.from() < hours.to() && pause.to() > from ? pause.to() : from;
      }
      if (from < hours.to()) {
        free.add(new Stretch(from, hours.to()));
      }
    }
    return free.stream().filter(each -> each.overlaps(time)).map(each -> clipped(each, time)).toList();
  }

  private static List<Stretch> sorted(Stream<Stretch> all) {
    return all.sorted(Comparator.comparingInt(Stretch::from)).toList();
  }
}
