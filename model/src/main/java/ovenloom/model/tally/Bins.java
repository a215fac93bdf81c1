package ovenloom.model.tally;

import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;

/** How many plans have about how much of two things: exactly while they are few, then in wider and wider bins. */
public final class Bins {

  /** More dots than these nobody can tell apart. */
  static final int MOST = 1_500;

  /** All plans from these amounts up to where the next bin begins. */
  public record Bin(long hands, long energy) {}

  private static final Comparator<Bin> ORDER = Comparator.comparingLong(Bin::hands)
      .thenComparingLong(Bin::energy);

  private Map<Bin, Long> counts = new TreeMap<>(ORDER);
  private long width = 1;

  void add(long hands, long energy) {
    counts.merge(bin(hands, energy), 1L, Long::sum);
    while (counts.size() > MOST) {
      width *= 2;
      Map<Bin, Long> wider = new TreeMap<>(ORDER);
      counts.forEach((bin, count) -> wider.merge(bin(bin.hands(), bin.energy()), count, Long::sum));
      counts = wider;
    }
  }

  private Bin bin(long hands, long energy) {
    return new Bin(hands - hands % width, energy - energy % width);
  }

  /** By bin, from the fewest minutes on. */
  public Map<Bin, Long> counts() {
    return Collections.unmodifiableMap(counts);
  }

  /** How wide a bin is, in minutes and in tenths of a kilowatt-hour; 1 where each holds what is alike. */
  public long width() {
    return width;
  }
}
