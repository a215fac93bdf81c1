package ovenloom.model.plan;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;

/**
 * How good a plan is, in levels; less is better, and a lower level only matters where all above it are equal.
 *
 * @param breaks how many rules it breaks; 0 for a plan
 * @param atTheTable by dish, what it loses on its way to the table
 * @param points by wish, before its weight
 * @param wishes the points, each kind times its weight, added up
 * @param early minutes from each step's start to its course, added up
 */
public record Score(
    long breaks, Map<String, Long> atTheTable, Map<Wish, Long> points, long wishes, long early)
    implements
      Comparable<Score> {

  public Score {
    atTheTable = Collections.unmodifiableMap(new TreeMap<>(atTheTable));
    Map<Wish, Long> byWish = new EnumMap<>(Wish.class);
    byWish.putAll(points);
    points = Collections.unmodifiableMap(byWish);
  }

  /** Adds the weighted sum. */
  public static Score of(
      long breaks, Map<String, Long> atTheTable, Map<Wish, Long> points, Wishes weights, long early) {
    long sum = 0;
    for (Map.Entry<Wish, Long> each : points.entrySet()) {
      sum += each.getValue() * weights.weight(each.getKey());
    }
    return new Score(breaks, atTheTable, points, sum, early);
  }

  /** What all dishes together lose on their way to the table. */
  public long atTheTableInAll() {
    return atTheTable.values().stream().mapToLong(Long::longValue).sum();
  }

  @Override
  public int compareTo(Score other) {
    int[] levels = {
        Long.compare(breaks, other.breaks),
        Long.compare(atTheTableInAll(), other.atTheTableInAll()),
        Long.compare(wishes, other.wishes),
        Long.compare(early, other.early)
    };
    for (int level : levels) {
      if (level != 0) {
        return level;
      }
    }
    return 0;
  }
}
