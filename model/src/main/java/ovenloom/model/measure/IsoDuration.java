package ovenloom.model.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Durations as ISO 8601-1 has them: weeks alone, or days and a time; a decimal only in the last
 * part. Years and months differ in length, so they are refused.
 */
final class IsoDuration {

  private static final String NUMBER = "(\\d{1,9}(?:\\.\\d{1,9})?)";
  private static final Pattern FORM = Pattern.compile(
      "p(?:N w|(?:N d)?(?:t(?=\\d)(?:N h)?(?:N m)?(?:N s)?)?)".replace(" ", "").replace("N", NUMBER));
  private static final Pattern DECIMAL_ONLY_LAST = Pattern.compile("[^.]*(?:\\.\\d+\\p{L})?");
  private static final Pattern YEARS_OR_MONTHS = Pattern.compile("p[^t]*[ym].*");
  private static final ClockUnit[] PARTS = {ClockUnit.WEEK, ClockUnit.DAY, ClockUnit.HOUR, ClockUnit.MINUTE,
      ClockUnit.SECOND};

  private IsoDuration() {}

  static boolean ahead(Scanner s) {
    s.at();
    return s.peek() == 'p';
  }

  /** Its seconds, or null. */
  static @Nullable BigFraction seconds(Scanner s) {
    int from = s.at();
    String text = s.run();
    if (YEARS_OR_MONTHS.matcher(text).matches()) {
      return s.refuse(from,
          "days or weeks, since years and months differ (\"P1M\" is a month, \"PT1M\" a minute)");
    }
    Matcher form = FORM.matcher(text);
    if (!form.matches() || text.equals("p") || !DECIMAL_ONLY_LAST.matcher(text).matches()) {
      return s.refuse(from, null);
    }
    return seconds(form);
  }

  private static BigFraction seconds(Matcher form) {
    var seconds = BigFraction.ZERO;
    for (int i = 0; i < PARTS.length; i++) {
      String part = form.group(i + 1);
      if (part != null) {
        seconds = seconds.add(fraction(part).multiply(PARTS[i].seconds()));
      }
    }
    return seconds;
  }

  private static BigFraction fraction(String decimal) {
    var value = new BigDecimal(decimal);
    return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
  }
}
