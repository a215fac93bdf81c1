package ovenloom.solver.timeline;

/**
 * Something that can be taken, over time, between two moments fixed when it is made.
 *
 * <p>Moments are whole minutes from the event's zero and may be negative; stretches are [from, to),
 * so what touches does not overlap, and an empty stretch always fits inside the horizon. Nothing is
 * available outside the horizon. Asking and taking allocate nothing once the arrays have grown.
 * A timeline belongs to one thread.
 */
public sealed interface Timeline permits CountTimeline, CookTimeline, DialTimeline, SurfaceTimeline {

  /** The answer of a search for a start when there is none inside the horizon. */
  int NONE = Integer.MIN_VALUE;

  /**
   * The blocker when the horizon, the hours or what was taken beforehand stands in the way, or when
   * there is not enough of the thing at all.
   */
  int HOURS = -1;

  /** The blocker when the last search got the very moment it asked for. */
  int NOBODY = -2;

  /** Gives back everything but what was taken beforehand; marks made until now are void. */
  void clear();

  /** A point to come back to with {@link #rollback}. */
  int mark();

  /** Gives back, newest first, everything taken since the mark; later marks are void. */
  void rollback(int mark);

  /**
   * What stood in the way of the last search for a start: with an answer, what keeps it from being
   * one minute later (or earlier, looking forward); with none, what was met last.
   *
   * @return the owner of that reservation, {@link #HOURS} or {@link #NOBODY}
   */
  int blocker();
}
