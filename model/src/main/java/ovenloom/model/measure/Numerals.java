package ovenloom.model.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** Numbers as cooks write them: {@code 1.5}, {@code 2 1/2}; and doubles brought to whole numbers. */
final class Numerals {

  private static final double BEYOND_ALL_KITCHENS = 1e15;
  private static final int DECIMALS = 6;

  private Numerals() {}

  /** The nearest whole number, halves upwards; refuses what is no number or absurdly large. */
  static long nearest(double value) {
    if (!(Math.abs(value) < BEYOND_ALL_KITCHENS)) {
      throw new IllegalArgumentException(value + " is no amount");
    }
    return Math.round(value);
  }

  /** The nearest whole number, halves upwards, of what is 0 or more. */
  static long nearest(BigFraction value) {
    return floor(value.add(BigFraction.of(1, 2)));
  }

  /** The least whole number that is not below the value, which is 0 or more. */
  static long ceiling(BigFraction value) {
    long floor = floor(value);
    return value.equals(BigFraction.of(floor)) ? floor : floor + 1;
  }

  private static long floor(BigFraction value) {
    return value.getNumerator().divide(value.getDenominator()).longValueExact();
  }

  /** The value over ten to the power of the places, without idle noughts: 1500 over 3 is "1.5". */
  static String decimal(long value, int places) {
    return BigDecimal.valueOf(value, places).stripTrailingZeros().toPlainString();
  }

  /** As a decimal of at most six places and nine digits, or null when it has none that is exact. */
  static @Nullable String decimal(BigFraction value) {
    BigFraction scaled = value.multiply(BigInteger.TEN.pow(DECIMALS));
    if (!scaled.getDenominator().equals(BigInteger.ONE)) {
      return null;
    }
    var decimal = new BigDecimal(scaled.getNumerator(), DECIMALS).stripTrailingZeros();
    return decimal.precision() > Figure.MOST_DIGITS ? null : decimal.toPlainString();
  }

  /** As a whole number and a fraction, either left out when there is none of it: "2 1/2". */
  static String mixed(BigFraction value) {
    BigInteger[] parts = value.getNumerator().divideAndRemainder(value.getDenominator());
    if (parts[1].signum() == 0) {
      return parts[0].toString();
    }
    String fraction = parts[1] + "/" + value.getDenominator();
    return parts[0].signum() == 0 ? fraction : parts[0] + " " + fraction;
  }
}
