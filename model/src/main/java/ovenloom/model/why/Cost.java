package ovenloom.model.why;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.menu.Wish;
import ovenloom.model.menu.Wishes;
import ovenloom.model.plan.Score;

/**
 * What another plan costs, level by level; less than 0 where it is better. What is equal is left out.
 *
 * @param atTheTable by dish, the largest difference first
 * @param wishes by kind, times its weight, the largest difference first
 */
public record Cost(Map<String, Long> atTheTable, Map<Wish, Long> wishes, long early) {

  public Cost {
    atTheTable = largestFirst(atTheTable);
    wishes = largestFirst(wishes);
  }

  /** Of one score instead of another, of one event. */
  public static Cost of(Score before, Score after, Wishes weights) {
    Map<String, Long> atTheTable = new TreeMap<>(after.atTheTable());
    before.atTheTable().forEach((dish, lost) -> atTheTable.merge(dish, -lost, Long::sum));
    Map<Wish, Long> wishes = new EnumMap<>(Wish.class);
    after.points().forEach((wish, points) -> wishes.merge(wish, points * weights.weight(wish), Long::sum));
    before.points().forEach((wish, points) -> wishes.merge(wish, -points * weights.weight(wish), Long::sum));
    return new Cost(atTheTable, wishes, after.early() - before.early());
  }

  /** All dishes together. */
  public long atTheTableInAll() {
    return sum(atTheTable);
  }

  /** All wishes together. */
  public long wishesInAll() {
    return sum(wishes);
  }

  /** Whether the other plan is the better one: by the first level that differs. */
  public boolean isLess() {
    long table = atTheTableInAll();
    long wished = wishesInAll();
    return table != 0 ? table < 0 : wished != 0 ? wished < 0 : early < 0;
  }

  /** Whether both are as good. */
  public boolean isNothing() {
    return atTheTableInAll() == 0 && wishesInAll() == 0 && early == 0;
  }

  private static long sum(Map<?, Long> differences) {
    return differences.values().stream().mapToLong(Long::longValue).sum();
  }

  private static <K> Map<K, Long> largestFirst(Map<K, Long> differences) {
    Map<K, Long> sorted = new LinkedHashMap<>();
    differences.entrySet()
        .stream()
        .filter(each -> each.getValue() != 0)
        .sorted(Comparator.comparingLong((Map.Entry<K, Long> each) -> Math.abs(each.getValue())).reversed())
        .forEach(each -> sorted.put(each.getKey(), each.getValue()));
    return Collections.unmodifiableMap(sorted);
  }
}
