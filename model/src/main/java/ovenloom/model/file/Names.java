package ovenloom.model.file;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The names things have in this event, also those of things that are wrong in other ways. */
final class Names {

  /** What a name can be the name of. */
  enum Kind {
    COURSE,
    OVEN,
    BURNER,
    STORE,
    VESSEL,
    APPLIANCE,
    CIRCUIT,
    COOK,
    SKILL,
    DISH;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private final Map<Kind, Set<String>> known = new EnumMap<>(Kind.class);
  private boolean home;

  /** The file says nothing of its kitchen. */
  void areThoseOfAHome() {
    home = true;
  }

  boolean isAtHome() {
    return home;
  }

  /** Whether the name is new. */
  boolean add(Kind kind, String name) {
    return known.computeIfAbsent(kind, k -> new LinkedHashSet<>()).add(name);
  }

  Set<String> all(Kind kind) {
    return known.getOrDefault(kind, Set.of());
  }
}
