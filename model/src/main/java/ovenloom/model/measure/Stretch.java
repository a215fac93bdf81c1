package ovenloom.model.measure;

import org.jspecify.annotations.Nullable;

/**
 * A stretch of whole minutes that owns its start and not its end, {@code [from, to)}, so that the
 * custard may go in the minute the bread comes out. Minutes count from whatever zero the caller
 * keeps; they may be negative. A stretch may be empty; an empty one overlaps nothing.
 *
 * @param from the first minute inside
 * @param to the first minute after it, not before {@code from}
 */
public record Stretch(int from, int to) {

  /** Refuses a stretch that ends before it begins, or whose length is no {@code int}. */
  public Stretch {
    if (to < from) {
      throw new IllegalArgumentException("a stretch from " + from + " cannot end at " + to);
    }
    Math.subtractExact(to, from);
  }

  /** How many minutes it lasts, 0 or more. */
  public int minutes() {
    return to - from;
  }

  /** Whether some minute lies in both. Stretches that merely touch do not overlap. */
  public boolean overlaps(Stretch other) {
    return Math.max(from, other.from) < Math.min(to, other.to);
  }

  /** Whether one ends at the minute the other begins. */
  public boolean abuts(Stretch other) {
    return to == other.from || other.to == from;
  }

  /** Whether the other begins no earlier and ends no later; a stretch encloses itself. */
  public boolean encloses(Stretch other) {
    return from <= other.from && other.to <= to;
  }

  /** Whether the minute lies inside: the first one does, the end does not. */
  public boolean contains(int minute) {
    return from <= minute && minute < to;
  }

  /** The minutes that lie in both, or null when they do not overlap. */
  public @Nullable Stretch shared(Stretch other) {
    return overlaps(other) ? new Stretch(Math.max(from, other.from), Math.min(to, other.to)) : null;
  }

  /**
   * The same length, so many minutes later, or earlier when negative.
   *
   * @throws ArithmeticException when that passes the ends of {@code int}
   */
  public Stretch shiftedBy(int minutes) {
    return new Stretch(Math.addExact(from, minutes), Math.addExact(to, minutes));
  }
}
