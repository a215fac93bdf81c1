package ovenloom.cli.sheet;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Shelves and racks that an act empties, and those that it fills. */
public record Places(Set<String> emptied, Set<String> filled) {

  static final Places NONE = new Places(Set.of(), Set.of());

  public Places {
    emptied = Set.copyOf(emptied);
    filled = Set.copyOf(filled);
  }

  static Places between(Spot from, Spot to) {
    return new Places(names(from), names(to));
  }

  private static Set<String> names(Spot spot) {
    return switch (spot) {
      case Spot.OnShelves(String store, List<String> shelves) -> named(store, shelves);
      case Spot.InOven(String oven, List<Integer> racks) -> named(oven, racks);
      case Spot.Bench() -> Set.of();
      case Spot.OnBurners(List<String> burners) -> Set.of();
      case Spot.InMachine(String machine) -> Set.of();
    };
  }

  private static Set<String> named(String place, List<?> parts) {
    Set<String> names = new HashSet<>();
    parts.forEach(part -> names.add(place + "/" + part));
    return names;
  }

  Places and(Places other) {
    return new Places(both(emptied, other.emptied), both(filled, other.filled));
  }

  private static Set<String> both(Set<String> first, Set<String> other) {
    Set<String> both = new HashSet<>(first);
    both.addAll(other);
    return both;
  }

  /** Whether this puts something where that takes something away. */
  boolean follows(Places that) {
    return !Collections.disjoint(filled, that.emptied);
  }
}
