package ovenloom.model.file;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Parsed;
import ovenloom.model.measure.Percent;
import ovenloom.model.measure.Range;

/** Texts that are no measures: counts, yes and no, one of a few words; and measures of which only some will do. */
final class Scalars {

  private static final Pattern COUNT = Pattern.compile("[0-9]{1,4}");

  private Scalars() {}

  /** A whole number from 1 to 9999. */
  static Parsed<Integer> count(String text) {
    return COUNT.matcher(text).matches() && Integer.parseInt(text) > 0
        ? new Parsed.Good<>(Integer.parseInt(text))
        : bad(text, "a whole number from 1 to 9999 like \"2\"");
  }

  /** A whole number from 0 to 9999. */
  static Parsed<Integer> countOrNone(String text) {
    return COUNT.matcher(text).matches() ? new Parsed.Good<>(Integer.parseInt(text))
        : bad(text, "a whole number from 0 to 9999 like \"6\"");
  }

  /** A whole number from 1 to so many. */
  static Parsed<Integer> upTo(String text, int most) {
    boolean isCount = text.matches("[0-9]{1,9}") && Integer.parseInt(text) > 0
        && Integer.parseInt(text) <= most;
    return isCount ? new Parsed.Good<>(Integer.parseInt(text))
        : bad(text, "a whole number from 1 to " + most + " like \"200\"");
  }

  static Parsed<Boolean> yesOrNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> new Parsed.Good<>(true);
      case "no", "false" -> new Parsed.Good<>(false);
      default -> bad(text, "\"yes\" or \"no\"");
    };
  }

  /** Minutes, of which there may be none; a range of them will not do. */
  static Parsed<Integer> minutes(String text) {
    return checked(Range.read(text), text, range -> range.least() == range.most() ? range.most() : null,
        "one time like \"20 min\", not from one to another");
  }

  /** At least a minute. */
  static Parsed<Integer> someMinutes(String text) {
    return checked(minutes(text), text, minutes -> minutes > 0 ? minutes : null, "at least a minute");
  }

  /** Whole per cents. */
  static Parsed<Integer> percent(String text) {
    return checked(Percent.read(text), text,
        read -> read.hundredths() % 100 == 0 ? read.hundredths() / 100 : null,
        "whole per cents like \"5 %\"");
  }

  /** One of these, written as people write them: small, with spaces. */
  static <E extends Enum<E>> Function<String, Parsed<E>> oneOf(Class<E> all) {
    return text -> {
      for (E each : all.getEnumConstants()) {
        if (word(each).equals(text.toLowerCase(Locale.ROOT))) {
          return new Parsed.Good<>(each);
        }
      }
      List<String> words = Arrays.stream(all.getEnumConstants()).map(Scalars::word).toList();
      return oneOfThese(text, words);
    };
  }

  /** How one of a few is written. */
  static String word(Enum<?> each) {
    return each.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static <T> Parsed<T> oneOfThese(String text, List<String> words) {
    String nearest = Nearest.to(text, words);
    String expected = words.stream()
        .map(word -> "\"" + word + "\"")
        .collect(Collectors.joining(", ", "one of ", ""));
    return new Parsed.Bad<>(expected, nearest == null ? List.of() : List.of(nearest), 0, text.length());
  }

  static <T> Parsed<T> bad(String text, String expected) {
    return new Parsed.Bad<>(expected, List.of(), 0, text.length());
  }

  /** What was understood, if it is also of the right kind. */
  static <A, B> Parsed<B> checked(Parsed<A> read, String text, Function<A, @Nullable B> kind,
      String expected) {
    return switch (read) {
      case Parsed.Good<A>(A value) -> {
        B right = kind.apply(value);
        yield right == null ? bad(text, expected) : new Parsed.Good<>(right);
      }
      case Parsed.Bad<A>(String wanted, List<String> suggestions, int from, int to) ->
        new Parsed.Bad<>(wanted, suggestions, from, to);
    };
  }
}
