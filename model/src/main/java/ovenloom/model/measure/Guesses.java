package ovenloom.model.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What someone may have meant who wrote something else. A guess need not make sense; whoever asks tries it. */
final class Guesses {

  private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");
  private static final Pattern BARE = Pattern.compile("(.*[\\d½⅓⅔¼¾⅛])\\s?(?:°|deg|degrees?)?");
  private static final Pattern WORD = Pattern.compile("\\p{L}+");

  private Guesses() {}

  /** The text with a decimal point for its comma, or without its thousands mark, and each without its sign. */
  static List<String> withoutMarks(String text) {
    String plain = Scanner.plain(text).strip();
    String unsigned = plain.replaceFirst("^[-+] ?", "");
    return Stream.of(plain, unsigned)
        .flatMap(t -> Stream.of(t.replace(',', '.'), THOUSANDS.matcher(t).replaceAll("")))
        .distinct()
        .toList();
  }

  /** The texts, and each that ends in a number with every one of these endings. */
  static List<String> ending(List<String> texts, String... endings) {
    var guesses = new ArrayList<>(texts);
    for (String text : texts) {
      Matcher bare = BARE.matcher(text);
      if (bare.matches()) {
        List.of(endings).forEach(ending -> guesses.add(bare.group(1) + " " + ending));
      }
    }
    return guesses;
  }

  /** The texts, and each with any one word put right that may be a slip of a unit. */
  static List<String> spelling(List<String> texts, Words<?> words) {
    var guesses = new ArrayList<>(texts);
    for (String text : texts) {
      WORD.matcher(text)
          .results()
          .forEach(word -> words.near(word.group())
              .forEach(meant -> guesses
                  .add(text.substring(0, word.start()) + meant + text.substring(word.end()))));
    }
    return guesses;
  }
}
