package ovenloom.cli.sheet;

import java.util.List;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Where;

/** Where food is, while it is worked on or while it waits. */
sealed interface Spot {

  /** The worktop: under someone's hands, or waiting there. */
  record Bench() implements Spot {}

  record InOven(String oven, List<Integer> racks) implements Spot {}

  record OnBurners(List<String> burners) implements Spot {}

  record OnShelves(String store, List<String> shelves) implements Spot {}

  /**
   * A machine that food is left in; one that someone works at throughout is part of the bench.
   */
  record InMachine(String appliance) implements Spot {}

  /** Where a stay's part is, of food that comes from a run. */
  static Spot of(Where where, Placement run) {
    return switch (where) {
      case Where.Counter() -> new Bench();
      case Where.OnShelf(String store, List<String> shelves) -> new OnShelves(store, shelves);
      case Where.InOven(String oven, var mark) ->
        new InOven(oven, run.baking() == null ? List.of() : run.baking().racks());
      case Where.OnBurner(List<String> burners) -> new OnBurners(burners);
    };
  }
}
