package ovenloom.cli.sheet;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where an act is done.
 *
 * @param emptied what it takes something out of
 * @param filled what it puts something into
 * @param others where it leaves all as it stands, and looks, turns or switches
 */
public record Places(Set<Place> emptied, Set<Place> filled, Set<Place> others) {

  static final Places NONE = at(Set.of());

  public Places {
    emptied = Set.copyOf(emptied);
    filled = Set.copyOf(filled);
    others = Set.copyOf(others);
  }

  static Places between(Spot from, Spot to) {
    return new Places(named(from), named(to), Set.of());
  }

  static Places onto(Place place) {
    return new Places(Set.of(), Set.of(place), Set.of());
  }

  static Places at(Spot spot) {
    return at(named(spot));
  }

  static Places at(Set<Place> places) {
    return new Places(Set.of(), Set.of(), places);
  }

  private static Set<Place> named(Spot spot) {
    return switch (spot) {
      case Spot.OnShelves(String store, List<String> shelves) -> named(store, shelves);
      case Spot.InOven(String oven, List<Integer> racks) -> named(oven, racks);
      case Spot.Bench() -> Set.of();
      case Spot.OnBurners(List<String> burners) -> Set.of();
      case Spot.InMachine(String machine) -> Set.of();
    };
  }

  private static Set<Place> named(String whole, List<?> parts) {
    return parts.stream().map(part -> new Place(whole, part.toString())).collect(Collectors.toSet());
  }

  Places and(Places other) {
    return new Places(
        both(emptied, other.emptied), both(filled, other.filled), both(others, other.others));
  }

  private static Set<Place> both(Set<Place> first, Set<Place> other) {
    Set<Place> both = new HashSet<>(first);
    both.addAll(other);
    return both;
  }

  /** Whether this puts something where that takes something away. */
  boolean follows(Places that) {
    return !Collections.disjoint(filled, that.emptied);
  }

  /** Whether any of it is done there. */
  boolean touch(Place place) {
    return Stream.of(emptied, filled, others).flatMap(Set::stream).anyMatch(place::touches);
  }
}
