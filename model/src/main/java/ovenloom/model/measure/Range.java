package ovenloom.model.measure;

/**
 * How long something takes, in whole minutes: one figure, or from a least to a most when it is
 * uncertain ({@code 40-45 min}). A day is 24 hours of elapsed time.
 *
 * @param least the shortest it may take, 0 or more
 * @param most the longest it may take, which is what a plan books
 */
public record Range(int least, int most) {

  private static final int HOUR = 60;
  private static final int DAY = 24 * HOUR;
  private static final int LONGEST_IN_MINUTES = 3 * HOUR;

  /** Refuses less than nothing, and a most below the least. */
  public Range {
    if (least < 0 || most < least) {
      throw new IllegalArgumentException("no time takes from " + least + " to " + most + " minutes");
    }
  }

  /** A time that is certain. */
  public static Range exactly(int minutes) {
    return new Range(minutes, minutes);
  }

  /**
   * In the largest units that fit: {@code 45 min}, {@code 1 h 15 min}, {@code 36 h},
   * {@code 3 days}, {@code 40-45 min}, {@code 2-3 h}, {@code 3 h 10 min - 4 h}.
   */
  public String written() {
    if (least == most) {
      return written(least);
    }
    if (least % DAY == 0 && most % DAY == 0) {
      return least / DAY + "-" + days(most / DAY);
    }
    if (least % HOUR == 0 && most % HOUR == 0) {
      return least / HOUR + "-" + most / HOUR + " h";
    }
    return most <= LONGEST_IN_MINUTES ? least + "-" + most + " min" : written(least) + " - " + written(most);
  }

  private static String written(int minutes) {
    if (minutes % DAY == 0 && minutes > DAY) {
      return days(minutes / DAY);
    }
    String hours = minutes / HOUR + " h";
    String rest = minutes % HOUR + " min";
    if (minutes < HOUR) {
      return rest;
    }
    return minutes % HOUR == 0 ? hours : hours + " " + rest;
  }

  private static String days(int days) {
    return days == 1 ? "1 day" : days + " days";
  }

  @Override
  public String toString() {
    return written();
  }
}
