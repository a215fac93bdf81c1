package ovenloom.model.kitchen;

import ovenloom.model.measure.Temperature;

/**
 * How an oven warms and cools: heating is linear, cooling is exponential towards the room; one figure each fixes them.
 * All minutes are rounded up.
 *
 * @param room the kitchen's temperature, where the oven starts each morning
 * @param heatsTo reached from {@code room} in {@code heatsIn} minutes
 * @param coolsFrom falls to {@code coolsTo} in {@code coolsIn} minutes
 */
public record Warmth(
    Temperature room, Temperature heatsTo, int heatsIn, Temperature coolsFrom, Temperature coolsTo,
    int coolsIn) {

  /** Ten days, minutes: longer than any gap between two bakes. What an oven does not get to by itself takes as long. */
  public static final int NEVER = 10 * 24 * 60;

  private static final double SLACK = 1e-6;

  public Warmth {
    if (heatsTo.compareTo(room) <= 0 || coolsTo.compareTo(room) <= 0 || coolsFrom.compareTo(coolsTo) <= 0) {
      throw new IllegalArgumentException("an oven warms and cools above its room");
    }
    if (heatsIn < 1 || coolsIn < 1) {
      throw new IllegalArgumentException("warming and cooling take at least a minute");
    }
  }

  /**
   * Minutes from one temperature to another, with the dial turned to the other. One no hotter than the room takes no
   * warming, and is never cooled to.
   *
   * @return at most {@link #NEVER}
   */
  public int minutes(Temperature from, Temperature to) {
    if (to.compareTo(room) <= 0) {
      return from.compareTo(room) > 0 ? NEVER : 0;
    }
    double rise = to.kelvinsAbove(from);
    double minutes = rise >= 0 ? rise / kelvinsAMinute()
        : minutesToFallToOneOverE() * Math.log(from.kelvinsAbove(room) / to.kelvinsAbove(room));
    return (int) Math.min(NEVER, Math.ceil(minutes - SLACK));
  }

  /** Where it has cooled to, switched off at a temperature for some minutes. */
  public Temperature cooled(Temperature from, int minutes) {
    double above = from.kelvinsAbove(room) * Math.exp(-minutes / minutesToFallToOneOverE());
    return room.plusKelvins(above);
  }

  /**
   * The preheat of an oven that was switched off at one temperature and must be at another after a gap: the least
   * number of minutes that reaches it from where the oven is when the preheat starts.
   *
   * @return minutes, at most {@code gap}; {@code gap + 1} where the gap is too short
   */
  public int preheat(Temperature off, Temperature wanted, int gap) {
    int minutes = 0;
    while (minutes <= gap && minutes(cooled(off, gap - minutes), wanted) > minutes) {
      minutes++;
    }
    return minutes;
  }

  private double kelvinsAMinute() {
    return heatsTo.kelvinsAbove(room) / heatsIn;
  }

  private double minutesToFallToOneOverE() {
    return coolsIn / Math.log(coolsFrom.kelvinsAbove(room) / coolsTo.kelvinsAbove(room));
  }
}
