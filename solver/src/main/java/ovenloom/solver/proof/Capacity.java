package ovenloom.solver.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;

/**
 * How much there is of something over time.
 *
 * @param most at any time
 * @param lacks by how much there is less, stretch by stretch
 */
record Capacity(long most, List<Lack> lacks) {

  /** There is less for a while. */
  record Lack(Stretch when, long amount) {}

  Capacity {
    lacks = List.copyOf(lacks);
  }

  /**
   * By how much there is at each minute of a calendar.
   *
   * @param turns the minutes at which it may change
   */
  static Capacity of(Stretch calendar, IntToLongFunction there, IntStream turns) {
    int[] ends = IntStream.concat(IntStream.of(calendar.from(), calendar.to()), turns)
        .filter(turn -> turn >= calendar.from() && turn <= calendar.to())
        .sorted()
        .distinct()
        .toArray();
    long most = IntStream.of(ends).mapToLong(there).max().orElse(0);
    List<Lack> lacks = new ArrayList<>();
    for (int i = 1; i < ends.length; i++) {
      long lack = most - there.applyAsLong(ends[i - 1]);
      if (lack > 0) {
        lacks.add(new Lack(new Stretch(ends[i - 1], ends[i]), lack));
      }
    }
    return new Capacity(most, lacks);
  }

  /** Of so many things at a time, as far as they may be used. */
  static long open(Availability open, long count, int minute) {
    if (!open.hours().isEmpty() && open.hours().stream().noneMatch(hours -> hours.contains(minute))) {
      return 0;
    }
    long taken = open.taken()
        .stream()
        .filter(each -> each.when().contains(minute))
        .mapToLong(Availability.Taken::count)
        .sum();
    return Math.max(0, count - taken);
  }

  static IntStream turns(Availability open) {
    return IntStream.concat(
        turns(open.hours()), turns(open.taken().stream().map(Availability.Taken::when).toList()));
  }

  static IntStream turns(Cook cook) {
    return IntStream.concat(turns(cook.hours()), turns(cook.breaks()));
  }

  private static IntStream turns(List<Stretch> stretches) {
    return stretches.stream().flatMapToInt(each -> IntStream.of(each.from(), each.to()));
  }

  /** Whether a cook is in hours and at no break. */
  static boolean isAtWork(Cook cook, int minute) {
    return cook.hours().stream().anyMatch(hours -> hours.contains(minute))
        && cook.breaks().stream().noneMatch(pause -> pause.contains(minute));
  }
}
