package ovenloom.model.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The members of a list by their names: an oven's `name`, a `dish`, what a step is to `do`. */
final class Members {

  private static final List<String> NAMES = List.of("name", "dish", "do");

  private final String nameKey;
  private final Map<String, Written> byName = new LinkedHashMap<>();

  private Members(String nameKey, Written.Many list) {
    this.nameKey = nameKey;
    for (Written item : list.items()) {
      String name = name(item, nameKey);
      if (name != null) {
        byName.put(name, item);
      }
    }
  }

  /** Of a list each of whose members has a name of its own, all under the same key; null of any other. */
  static @Nullable Members of(Written.Many list) {
    return NAMES.stream()
        .map(key -> new Members(key, list))
        .filter(members -> !list.items().isEmpty() && members.byName.size() == list.items().size())
        .findFirst()
        .orElse(null);
  }

  private static @Nullable String name(Written item, String key) {
    Written.Entry entry = item instanceof Written.Keyed keyed ? keyed.entry(key) : null;
    return entry != null && entry.value() instanceof Written.Words words ? words.text() : null;
  }

  @Nullable
  Written called(String name) {
    return byName.get(name);
  }

  void put(String name, Written member) {
    byName.put(name, member);
  }

  void takeOut(String name) {
    byName.remove(name);
  }

  /** A new one at the end; it is called as its patch is. */
  void add(Written.Words name, Written member) {
    Written called = member;
    if (member instanceof Written.Keyed keyed && keyed.entry(nameKey) == null) {
      Written.Words key = new Written.Words(nameKey, name.place(), null, "");
      called = new Written.Keyed(
          Stream.concat(Stream.of(new Written.Entry(key, name)), keyed.entries().stream()).toList(),
          keyed.whole(),
          keyed.place());
    }
    byName.put(name.text(), called);
  }

  /** Why a patch that does not say its name itself adds none that is called so: another is called nearly so; null where none is. */
  @Nullable
  Fault almostKnown(String name, Written patch) {
    String nearest = name(patch, nameKey) == null ? Nearest.bySlip(name, byName.keySet()) : null;
    return nearest == null ? null : new Fault.AlmostKnown(name, kind(), nearest, nameKey);
  }

  Fault unknown(String name) {
    List<String> known = List.copyOf(byName.keySet());
    return new Fault.UnknownName(name, kind(), Nearest.to(name, known), known, false);
  }

  private String kind() {
    return switch (nameKey) {
      case "do" -> "step";
      case "dish" -> "dish";
      default -> "thing here called";
    };
  }

  List<Written> all() {
    return new ArrayList<>(byName.values());
  }
}
