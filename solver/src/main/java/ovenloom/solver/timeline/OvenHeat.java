package ovenloom.solver.timeline;

/** How an oven warms and cools, between settings by number; all in minutes. */
public interface OvenHeat {

  /** From one setting to another; none is needed to {@link Bake#OFF}, and from there as much as from room temperature. */
  int change(int one, int other);

  /** From room temperature to a setting. */
  int fromRoom(int setting);

  /** To a setting, in an oven that was switched off so many minutes before, at another. */
  int preheat(int last, int next, int minutes);

  /**
   * How long an oven that stands empty over [from, to), between two uses of one day, is on before the later: all the while
   * if it is held, else for its preheat.
   */
  int onBefore(int last, int next, int from, int to);
}
