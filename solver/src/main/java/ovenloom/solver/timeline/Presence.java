package ovenloom.solver.timeline;

import java.util.Arrays;

/**
 * Open minutes: when some cook is in hours, when a shop or a larder is open.
 *
 * <p>Never changes; {@link #and} and {@link #except} make another. A stretch [from, to) is covered
 * if all its minutes are open; a bare moment is open up to and including the one at which the open
 * minutes end, for food may still be moved then. Stretches that touch count as one.
 */
public final class Presence {

  private final int[] opens;
  private final int[] closes;

  private Presence(int[] opens, int[] closes) {
    this.opens = opens;
    this.closes = closes;
  }

  /** No open minute at all. */
  public static Presence never() {
    return new Presence(new int[0], new int[0]);
  }

  /** Open over [from, to); never, if that is empty. */
  public static Presence between(int from, int to) {
    return never().and(from, to);
  }

  /** Open over [from, to) besides. */
  public Presence and(int from, int to) {
    if (from >= to) {
      return this;
    }
    int[] starts = new int[opens.length + 1];
    int[] ends = new int[opens.length + 1];
    int kept = 0;
    int start = from;
    int end = to;
    for (int i = 0; i < opens.length; i++) {
      if (opens[i] <= to && closes[i] >= from) {
        start = Math.min(start, opens[i]);
        end = Math.max(end, closes[i]);
      } else {
        starts[kept] = opens[i];
        ends[kept++] = closes[i];
      }
    }
    starts[kept] = start;
    ends[kept++] = end;
    return sorted(starts, ends, kept);
  }

  /** Open whenever either is. */
  public Presence and(Presence other) {
    Presence both = this;
    for (int i = 0; i < other.opens.length; i++) {
      both = both.and(other.opens[i], other.closes[i]);
    }
    return both;
  }

  /** Closed over [from, to): a break. */
  public Presence except(int from, int to) {
    if (from >= to) {
      return this;
    }
    int[] starts = new int[2 * opens.length];
    int[] ends = new int[2 * opens.length];
    int kept = 0;
    for (int i = 0; i < opens.length; i++) {
      int before = Math.min(closes[i], from);
      if (opens[i] < before) {
        starts[kept] = opens[i];
        ends[kept++] = before;
      }
      int after = Math.max(opens[i], to);
      if (after < closes[i]) {
        starts[kept] = after;
        ends[kept++] = closes[i];
      }
    }
    return sorted(starts, ends, kept);
  }

  private static Presence sorted(int[] starts, int[] ends, int kept) {
    int[] opens = Arrays.copyOf(starts, kept);
    int[] closes = Arrays.copyOf(ends, kept);
    Arrays.sort(opens);
    Arrays.sort(closes);
    return new Presence(opens, closes);
  }

  /** How many separate open stretches there are. */
  public int stretches() {
    return opens.length;
  }

  /** The first minute of an open stretch, counted from zero in order of time. */
  public int opens(int stretch) {
    return opens[stretch];
  }

  /** The moment an open stretch ends. */
  public int closes(int stretch) {
    return closes[stretch];
  }

  /** Whether something that takes no minutes may happen at this moment. */
  public boolean openAt(int moment) {
    int stretch = lastOpeningBy(moment);
    return stretch >= 0 && moment <= closes[stretch];
  }

  /** The latest moment, not after this one, at which it is open; or {@link Timeline#NONE}. */
  public int latestMoment(int notAfter) {
    int stretch = lastOpeningBy(notAfter);
    return stretch < 0 ? Timeline.NONE : Math.min(notAfter, closes[stretch]);
  }

  /** Whether every minute of [from, to) is open; for an empty one, whether that moment is. */
  public boolean covers(int from, int to) {
    int stretch = lastOpeningBy(from);
    return stretch >= 0 && Math.max(from, to) <= closes[stretch];
  }

  /** The latest start, not after this moment, covered for so long; or {@link Timeline#NONE}. */
  public int latestCovered(int notAfter, int duration) {
    for (int stretch = lastOpeningBy(notAfter); stretch >= 0; stretch--) {
      int start = Math.min(notAfter, closes[stretch] - duration);
      if (start >= opens[stretch]) {
        return start;
      }
    }
    return Timeline.NONE;
  }

  private int lastOpeningBy(int moment) {
    int stretch = opens.length - 1;
    while (stretch >= 0 && opens[stretch] > moment) {
      stretch--;
    }
    return stretch;
  }
}
