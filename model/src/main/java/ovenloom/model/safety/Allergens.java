package ovenloom.model.safety;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What tags say of allergens: {@code contains nuts} that food has one, {@code free of nuts} that it is for someone who must not get
 * it, {@code clean down} that a chore is the wash of the work surface and the tools. Any name will do: which allergens must be told
 * is a matter of local law.
 */
public final class Allergens {

  /**
   * Names that nobody needs to explain: the fourteen of Regulation (EU) No 1169/2011, annex II, the nine of FALCPA and the FASTER Act, and other
   * words for them. From memory.
   */
  public static final List<String> KNOWN = List.of("gluten", "wheat", "crustaceans", "shellfish", "eggs",
      "egg",
      "fish", "peanuts", "peanut", "soya", "soy", "soybeans", "milk", "dairy", "lactose", "nuts", "nut",
      "tree nuts",
      "celery", "mustard", "sesame", "sulphites", "sulfites", "lupin", "molluscs", "mollusks");

  private static final String CONTAINS = "contains ";
  private static final String FREE_OF = "free of ";
  private static final String CLEAN_DOWN = "clean down";

  private Allergens() {}

  /** Those that food with these tags has. */
  public static Set<String> in(List<String> tags) {
    return named(CONTAINS, tags);
  }

  /** Those that food with these tags must not have. */
  public static Set<String> keptOutOf(List<String> tags) {
    return named(FREE_OF, tags);
  }

  /** Whether a chore with these tags leaves the work surface and the tools clean. */
  public static boolean areCleanedAwayBy(List<String> tags) {
    return tags.contains(CLEAN_DOWN);
  }

  private static Set<String> named(String before, List<String> tags) {
    Set<String> names = new TreeSet<>();
    for (String tag : tags) {
      if (tag.startsWith(before)) {
        names.add(tag.substring(before.length()).strip());
      }
    }
    return names;
  }
}
