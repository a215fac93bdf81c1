package ovenloom.model.measure;

/**
 * How long work takes when it grows with the number of portions: {@code 10 min + 20 s a portion}.
 * Work that does not grow is a pace of 0 seconds a portion.
 *
 * @param least the shortest time before the first portion counts, in whole minutes
 * @param most the longest
 * @param secondsAPortion what each portion adds, 0 or more
 */
public record Pace(int least, int most, int secondsAPortion) {

  private static final int MINUTE = 60;

  /** Refuses less than nothing, and a most below the least. */
  public Pace {
    var base = new Range(least, most);
    if (secondsAPortion < 0) {
      throw new IllegalArgumentException(base + " + " + secondsAPortion + " s a portion");
    }
  }

  /** A time that no number of portions changes. */
  public static Pace steady(Range time) {
    return new Pace(time.least(), time.most(), 0);
  }

  /**
   * The time so many portions take, each end rounded up to whole minutes; at least one minute for
   * one portion or more.
   *
   * @param portions 0 or more
   * @throws IllegalArgumentException for fewer
   * @throws ArithmeticException when the minutes are more than an {@code int} holds
   */
  public Range minutesFor(int portions) {
    if (portions < 0) {
      throw new IllegalArgumentException(portions + " portions");
    }
    long added = Math.ceilDiv((long) portions * secondsAPortion, MINUTE);
    int floor = Math.min(portions, 1);
    return new Range(Math.max(floor, Math.toIntExact(least + added)),
        Math.max(floor, Math.toIntExact(most + added)));
  }

  /** As a cook would write it: {@code 20 s a portion}, {@code 10-15 min + 2 min a portion}. */
  public String written() {
    var base = new Range(least, most);
    if (secondsAPortion == 0) {
      return base.written();
    }
    String each = secondsAPortion % MINUTE == 0 ? secondsAPortion / MINUTE + " min a portion"
        : secondsAPortion + " s a portion";
    return most == 0 ? each : base.written() + " + " + each;
  }

  @Override
  public String toString() {
    return written();
  }
}
