package ovenloom.model.measure;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

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

  private static final BigFraction MOST_SECONDS = BigFraction.of(ClockUnit.DAY.seconds());
  private static final Reader<Pace> READER = new Reader<>(
      "a time like \"40-45 min\", \"20 s a portion\" or \"10 min + 20 s a portion\"", Pace::understand,
      Pace::written,
      Pace::guesses);

  /** Refuses less than nothing, and a most below the least. */
  public Pace {
    var base = new Range(least, most);
    if (secondsAPortion < 0) {
      throw new IllegalArgumentException(base + " + " + secondsAPortion + " s a portion");
    }
  }

  /**
   * Reads a time that may grow with the portions: {@code 10 min + 20 s a portion}, {@code 1/2 min
   * per portion}, or any {@link Range}. What a portion adds is rounded up to whole seconds and is
   * at most a day.
   */
  public static Parsed<Pace> read(String text) {
    return READER.read(text);
  }

  private static @Nullable Pace understand(Scanner s) {
    int from = s.at();
    Elapsed first = Elapsed.read(s);
    if (first == null) {
      return null;
    }
    if (s.ended()) {
      return steady(first.minutes());
    }
    if (!s.take('+')) {
      return growing(s, from, Range.exactly(0), first);
    }
    int plus = s.at();
    Elapsed each = Elapsed.read(s);
    return each == null ? null : growing(s, plus, first.minutes(), each);
  }

  private static @Nullable Pace growing(Scanner s, int from, Range base, Elapsed each) {
    boolean per = s.takeWord("a", "per", "each") || s.take('/');
    if (!per || !s.takeWord("portion")) {
      return null;
    }
    if (!each.least().equals(each.most()) || each.most().compareTo(MOST_SECONDS) > 0) {
      return s.refuse(from, "one time of at most a day for each portion");
    }
    return new Pace(base.least(), base.most(), (int) Numerals.ceiling(each.most()));
  }

  private static List<String> guesses(List<String> texts) {
    var guesses = new ArrayList<>(Range.guesses(texts, "min", "h", "s a portion"));
    for (String text : texts) {
      guesses.add(text + " a portion");
      guesses.add(text.replace(" a portion", " s a portion"));
    }
    return guesses;
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
