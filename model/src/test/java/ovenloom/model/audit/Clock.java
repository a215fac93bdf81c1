package ovenloom.model.audit;

import ovenloom.model.measure.Stretch;

/** The clock on the wall of the tests. */
public final class Clock {

  private static final int DAY = 1440;

  private Clock() {}

  /** Minutes of a time on the day: {@code at("18:30")}. */
  public static int at(String time) {
    String[] parts = time.split(":", -1);
    return Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1]);
  }

  /** Minutes of a time some days before: {@code daysBefore(1, "18:30")}. */
  public static int daysBefore(int days, String time) {
    return at(time) - days * DAY;
  }

  /** From one time on the day to another. */
  public static Stretch between(String from, String to) {
    return new Stretch(at(from), at(to));
  }
}
