package ovenloom.model.measure;

import java.math.BigInteger;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** A number as cooks write it: {@code 3}, {@code 1.5}, {@code 2 1/2}, {@code 2½}, {@code 3/4}; never below nothing. */
final class Figure {

  static final int MOST_DIGITS = 9;
  private static final Map<Character, BigFraction> GLYPHS = Map.ofEntries(glyph('½', 1, 2), glyph('⅓', 1, 3),
      glyph('⅔', 2, 3), glyph('¼', 1, 4), glyph('¾', 3, 4), glyph('⅕', 1, 5), glyph('⅖', 2, 5),
      glyph('⅗', 3, 5),
      glyph('⅘', 4, 5), glyph('⅙', 1, 6), glyph('⅚', 5, 6), glyph('⅐', 1, 7), glyph('⅛', 1, 8),
      glyph('⅜', 3, 8),
      glyph('⅝', 5, 8), glyph('⅞', 7, 8), glyph('⅑', 1, 9), glyph('⅒', 1, 10));

  private Figure() {}

  private static Map.Entry<Character, BigFraction> glyph(char glyph, int over, int under) {
    return Map.entry(glyph, BigFraction.of(over, under));
  }

  /** Whether a number begins here. */
  static boolean ahead(Scanner s) {
    s.at();
    return digit(s) || s.peek() == '.' || GLYPHS.containsKey(s.peek());
  }

  /** The number that begins here, or null; a comma in it is refused, and so are more than nine digits. */
  static @Nullable BigFraction read(Scanner s) {
    int from = s.at();
    BigFraction value = number(s, from);
    if (value == null || s.peek() != ',') {
      return value;
    }
    s.step();
    s.digits();
    return s.refuse(from, null);
  }

  private static @Nullable BigFraction number(Scanner s, int from) {
    BigFraction glyph = glyph(s);
    if (glyph != null) {
      return glyph;
    }
    String digits = s.digits();
    if (s.peek() == '.') {
      s.step();
      return decimal(s, from, digits, s.digits());
    }
    BigFraction whole = over(s, from, digits, "1");
    if (whole == null) {
      return null;
    }
    if (s.peek() == '/') {
      s.step();
      return over(s, from, digits, s.digits());
    }
    BigFraction rest = fractionBehind(s);
    return rest == null ? null : whole.add(rest);
  }

  private static @Nullable BigFraction decimal(Scanner s, int from, String whole, String decimals) {
    if (decimals.isEmpty()) {
      return null;
    }
    return tooLong(whole + decimals) ? refuse(s, from)
        : BigFraction.of(new BigInteger(whole + decimals), BigInteger.TEN.pow(decimals.length()));
  }

  private static @Nullable BigFraction over(Scanner s, int from, String over, String under) {
    if (over.isEmpty() || under.isEmpty()) {
      return null;
    }
    if (tooLong(over) || tooLong(under)) {
      return refuse(s, from);
    }
    int divisor = Integer.parseInt(under);
    return divisor == 0 ? s.refuse(from, "a fraction that does not divide by nothing")
        : BigFraction.of(Integer.parseInt(over), divisor);
  }

  /** The 1/2 of 2 1/2, zero when something else follows the 2, or null when a fraction begins and comes to nothing. */
  private static @Nullable BigFraction fractionBehind(Scanner s) {
    int before = s.at();
    BigFraction glyph = glyph(s);
    if (glyph != null) {
      return glyph;
    }
    String over = s.digits();
    if (!over.isEmpty() && s.peek() == '/') {
      s.step();
      return over(s, before, over, s.digits());
    }
    s.backTo(before);
    return BigFraction.ZERO;
  }

  private static @Nullable BigFraction glyph(Scanner s) {
    BigFraction value = GLYPHS.get(s.peek());
    if (value != null) {
      s.step();
    }
    return value;
  }

  private static boolean digit(Scanner s) {
    return '0' <= s.peek() && s.peek() <= '9';
  }

  private static boolean tooLong(String digits) {
    return digits.length() > MOST_DIGITS;
  }

  private static @Nullable BigFraction refuse(Scanner s, int from) {
    return s.refuse(from, "a number of at most nine digits");
  }
}
