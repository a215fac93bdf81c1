package ovenloom.cli.sheet;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** A letter for each dish: that with which a word of its name begins, else the next of its letters, else any that is free. */
record Letters(Map<String, Character> byDish) {

  /** Where there are more dishes than letters. */
  static final char ANOTHER = '+';

  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";
  private static final Pattern INSIDE_A_WORD = Pattern.compile("(?<=[A-Z])[A-Z]+");
  private static final Pattern NO_LETTER = Pattern.compile("[^A-Z]+");

  static Letters of(List<String> dishes) {
    Map<String, Character> letters = new HashMap<>();
    int longest = dishes.stream().map(Letters::own).mapToInt(String::length).max().orElse(0);
    for (int i = 0; i < longest; i++) {
      for (String dish : dishes) {
        String own = own(dish);
        give(dish, i < own.length() ? own.substring(i, i + 1) : "", letters);
      }
    }
    dishes.forEach(dish -> give(dish, ALL, letters));
    return new Letters(letters);
  }

  /** The first of these letters that is free, unless it has one. */
  private static void give(String dish, String wanted, Map<String, Character> letters) {
    wanted.chars()
        .mapToObj(letter -> (char) letter)
        .filter(letter -> !letters.containsKey(dish) && !letters.containsValue(letter))
        .findFirst()
        .ifPresent(letter -> letters.put(dish, letter));
  }

  /** Those that begin a word, then all of them, then all of them small. */
  private static String own(String name) {
    String words = Normalizer.normalize(name, Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .toUpperCase(Locale.ROOT);
    String all = NO_LETTER.matcher(words).replaceAll("");
    String first = NO_LETTER.matcher(INSIDE_A_WORD.matcher(words).replaceAll("")).replaceAll("");
    return first + all + all.toLowerCase(Locale.ROOT);
  }

  char of(String dish) {
    return byDish.getOrDefault(dish, ANOTHER);
  }
}
