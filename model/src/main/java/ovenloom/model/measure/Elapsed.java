package ovenloom.model.measure;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How long something takes as it was written, before it is rounded up to whole minutes.
 *
 * @param least the least seconds
 * @param most the most seconds
 */
record Elapsed(BigFraction least, BigFraction most) {

  private static final BigFraction LONGEST = BigFraction.of(366L * ClockUnit.DAY.seconds());

  /** One time, or two with a dash between them, which may share the unit behind the second. */
  static @Nullable Elapsed read(Scanner s) {
    int from = s.at();
    BigFraction bare = Figure.ahead(s) ? Figure.read(s) : null;
    if (bare != null && dash(s)) {
      return sharingAUnit(s, from, bare);
    }
    s.backTo(from);
    BigFraction least = amount(s);
    BigFraction most = least != null && dash(s) ? amount(s) : least;
    return least == null || most == null ? null : checked(s, from, new Elapsed(least, most));
  }

  /** In whole minutes, each end rounded up. */
  Range minutes() {
    return new Range(roundedUp(least), roundedUp(most));
  }

  private static int roundedUp(BigFraction seconds) {
    return (int) Numerals.ceiling(seconds.divide(ClockUnit.MINUTE.seconds()));
  }

  private static @Nullable Elapsed sharingAUnit(Scanner s, int from, BigFraction least) {
    BigFraction most = Figure.read(s);
    ClockUnit unit = most == null ? null : s.unit(ClockUnit.WORDS);
    if (most == null || unit == null) {
      return null;
    }
    return checked(s, from, new Elapsed(least.multiply(unit.seconds()), most.multiply(unit.seconds())));
  }

  private static boolean dash(Scanner s) {
    return s.take('-') || s.takeWord("to");
  }

  private static @Nullable BigFraction amount(Scanner s) {
    if (IsoDuration.ahead(s)) {
      return IsoDuration.seconds(s);
    }
    int from = s.at();
    BigFraction total = null;
    int before = Integer.MAX_VALUE;
    while (total == null || Figure.ahead(s)) {
      BigFraction some = Figure.read(s);
      ClockUnit unit = some == null ? null : s.unit(ClockUnit.WORDS);
      if (some == null || unit == null) {
        return null;
      }
      if (unit.seconds() >= before) {
        return s.refuse(from, "each unit once, the largest first");
      }
      before = unit.seconds();
      BigFraction part = some.multiply(unit.seconds());
      total = total == null ? part : total.add(part);
    }
    return total;
  }

  private static @Nullable Elapsed checked(Scanner s, int from, Elapsed read) {
    if (read.least.compareTo(read.most) > 0) {
      return s.refuse(from, "the shorter time first, like \"40-45 min\"");
    }
    return read.most.compareTo(LONGEST) > 0 ? s.refuse(from, "a time of at most 366 days") : read;
  }
}
