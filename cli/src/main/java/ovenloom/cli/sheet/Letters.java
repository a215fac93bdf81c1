package ovenloom.cli.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A letter for each dish: one of its name if it can be, else any that is free. */
record Letters(Map<String, Character> byDish) {

  /** Where there are more dishes than letters. */
  static final char ANOTHER = '+';

  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789";

  static Letters of(List<String> dishes) {
    Map<String, Character> letters = new LinkedHashMap<>();
    for (String dish : dishes) {
      letters.put(dish, candidates(dish)
          .filter(letter -> !letters.containsValue(letter))
          .findFirst()
          .orElse(ANOTHER));
    }
    return new Letters(letters);
  }

  private static Stream<Character> candidates(String name) {
    IntStream own = name.toUpperCase(Locale.ROOT).chars().filter(letter -> letter >= 'A' && letter <= 'Z');
    return IntStream.concat(own, ALL.chars()).mapToObj(letter -> (char) letter);
  }

  char of(String dish) {
    return byDish.getOrDefault(dish, ANOTHER);
  }
}
