package ovenloom.model.measure;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;

/** The words that name units, in small letters, and what each means. */
record Words<U>(Map<String, U> meanings) {

  private static final Pattern COMMA = Pattern.compile(", ");
  private static final int SHORTEST_WITH_A_SLIP = 5;
  private static final LevenshteinDistance ONE_LETTER = new LevenshteinDistance(1);

  /** Every unit's words, given as one text with commas between them; a unit may have none. */
  static <U> Words<U> of(U[] units, Function<U, String> words) {
    var meanings = new LinkedHashMap<String, U>();
    for (U unit : units) {
      for (String word : COMMA.split(words.apply(unit), -1)) {
        meanings.put(word, unit);
      }
    }
    meanings.remove("");
    return new Words<>(meanings);
  }

  @Nullable
  U meaning(String word) {
    return meanings.get(word);
  }

  /**
   * The words this one may have been meant to be, none if it is one of them: any it begins if it is
   * one letter, else those it is a slip of.
   */
  List<String> near(String word) {
    if (meanings.containsKey(word)) {
      return List.of();
    }
    Predicate<String> meant = word.length() == 1 ? w -> w.startsWith(word) && w.indexOf(' ') < 0
        : w -> isSlip(word, w);
    return meanings.keySet().stream().filter(meant).toList();
  }

  /** Same first letter, and one letter wrong in a long word or two changed about in any. */
  private static boolean isSlip(String word, String meant) {
    if (word.isEmpty() || !meant.startsWith(word.substring(0, 1))) {
      return false;
    }
    boolean changedAbout = sorted(word).equals(sorted(meant));
    boolean oneWrong = word.length() >= SHORTEST_WITH_A_SLIP && ONE_LETTER.apply(word, meant) >= 0;
    return changedAbout || oneWrong;
  }

  private static String sorted(String word) {
    char[] letters = word.toCharArray();
    Arrays.sort(letters);
    return String.valueOf(letters);
  }
}
