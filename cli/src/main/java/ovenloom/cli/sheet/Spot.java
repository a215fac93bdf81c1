package ovenloom.cli.sheet;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Kitchen;
import ovenloom.model.kitchen.Shelf;
import ovenloom.model.plan.Where;

/** Where food is, while it is worked on or while it waits. */
sealed interface Spot {

  /** The worktop: under someone's hands, or waiting there. */
  record Bench() implements Spot {}

  record InOven(String oven, List<Integer> racks) implements Spot {}

  record OnBurners(List<String> burners) implements Spot {}

  /** Shelves of one store, whichever vessel stands on which of them. */
  record OnShelves(String store, List<String> shelves) implements Spot {
    public OnShelves {
      shelves = shelves.stream().sorted().toList();
    }
  }

  /**
   * A machine that food is left in; one that someone works at throughout is part of the bench.
   */
  record InMachine(String appliance) implements Spot {}

  /** Where a stay's part is, of food that comes from a run in which it was on these racks. */
  static Spot of(Where where, List<Integer> racks) {
    return switch (where) {
      case Where.Counter() -> new Bench();
      case Where.OnShelf(String store, List<String> shelves) -> new OnShelves(store, shelves);
      case Where.InOven(String oven, var mark) -> new InOven(oven, racks);
      case Where.OnBurner(List<String> burners) -> new OnBurners(burners);
    };
  }

  /** What all of it is part of: a whole fridge, a whole oven. */
  default String place() {
    return switch (this) {
      case Bench() -> "bench";
      case InOven(String oven, List<Integer> racks) -> "oven " + oven;
      case OnBurners(List<String> burners) -> "burners";
      case OnShelves(String store, List<String> shelves) -> "store " + store;
      case InMachine(String machine) -> "machine " + machine;
    };
  }

  /** How far from the top of its place the highest part of it is: racks are counted from the bottom, shelves from the top. */
  default int fromTop(Kitchen kitchen) {
    return switch (this) {
      case InOven(String oven, List<Integer> racks) -> -Collections.max(racks);
      case OnShelves(String store, List<String> shelves) -> {
        List<Shelf> all = Objects.requireNonNull(kitchen.store(store)).shelves();
        yield all
            .indexOf(all.stream().filter(each -> shelves.contains(each.name())).findFirst().orElseThrow());
      }
      case Bench() -> 0;
      case OnBurners(List<String> burners) -> 0;
      case InMachine(String machine) -> 0;
    };
  }

  /** Both, where they are part of one place. */
  static Spot and(Spot first, Spot other) {
    if (first instanceof InOven(String oven, List<Integer> racks)
        && other instanceof InOven(String same, List<Integer> more)) {
      return new InOven(oven, joined(racks, more));
    }
    if (first instanceof OnBurners(List<String> burners)
        && other instanceof OnBurners(List<String> more)) {
      return new OnBurners(joined(burners, more));
    }
    if (first instanceof OnShelves(String store, List<String> shelves)
        && other instanceof OnShelves(String same, List<String> more)) {
      return new OnShelves(store, joined(shelves, more));
    }
    return first;
  }

  private static <T> List<T> joined(List<T> first, List<T> more) {
    return Stream.concat(first.stream(), more.stream()).toList();
  }
}
