package ovenloom.model.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;

/** Finds the word someone may have meant. */
public final class Nearest {

  private Nearest() {}

  /** The known word most like this one, or null where none is at all like it; of two as like, the first. */
  public static @Nullable String to(String written, Collection<String> known) {
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String word : known) {
      int slips = slips(written.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
      if (slips < least) {
        best = word;
        least = slips;
      }
    }
    return least <= Math.max(1, written.length() / 3) ? best : insteadOf(written, known);
  }

  /** The known word that this one is a single slip away from, or null; a number more or less is none. */
  static @Nullable String bySlip(String written, Collection<String> known) {
    String nearest = to(written, known);
    return nearest == null || slips(written, nearest) > 1 || lettersOf(written).equals(lettersOf(nearest))
        ? null
        : nearest;
  }

  private static String lettersOf(String word) {
    return word.replaceAll("\\d", "");
  }

  /** A mixing bowl is a bowl: the longest known word with which what was written ends, or null. */
  private static @Nullable String insteadOf(String written, Collection<String> known) {
    return known.stream()
        .filter(word -> written.toLowerCase(Locale.ROOT).endsWith(" " + word.toLowerCase(Locale.ROOT)))
        .max(Comparator.comparingInt(String::length))
        .orElse(null);
  }

  private static int slips(String one, String other) {
    boolean changedAbout = one.length() > 2 && sorted(one).equals(sorted(other));
    return changedAbout ? 1 : LevenshteinDistance.getDefaultInstance().apply(one, other);
  }

  private static String sorted(String word) {
    return word.chars().sorted().mapToObj(Character::toString).collect(Collectors.joining());
  }
}
