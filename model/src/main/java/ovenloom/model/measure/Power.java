package ovenloom.model.measure;

/**
 * What an appliance draws.
 *
 * @param watts 0 or more
 */
public record Power(int watts) implements Comparable<Power> {

  private static final int KILOWATT = 1000;

  /** Refuses less than nothing. */
  public Power {
    if (watts < 0) {
      throw new IllegalArgumentException("a power of " + watts + " W is negative");
    }
  }

  @Override
  public int compareTo(Power other) {
    return Integer.compare(watts, other.watts);
  }

  /** In watts below a kilowatt, else in kilowatts, exactly: {@code 750 W}, {@code 2.4 kW}. */
  public String written() {
    return watts < KILOWATT ? watts + " W" : Numerals.decimal(watts, 3) + " kW";
  }

  @Override
  public String toString() {
    return written();
  }
}
