package ovenloom.cli.sheet;

import java.util.Set;
import java.util.stream.Collectors;
import ovenloom.model.kitchen.Air;
import ovenloom.model.kitchen.Store;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.StartState;

/** What a file says is cold when its first step begins has been somewhere cold; in a shop, if that step brings it. */
record OutOfTheCold(Book book, BatchStep step) {

  /** Words by which a step that brings food home begins. */
  private static final Set<String> BRINGS = Set.of("buy", "fetch", "collect");

  String sentence() {
    return switch (starts()) {
      case STRAIGHT_ON, RESTED -> "";
      case CHILLED -> "Out of the fridge.";
      case FROZEN -> "Out of the freezer.";
    };
  }

  /** Wherever it may have stood. */
  Places places() {
    return Places.at(book.event()
        .kitchen()
        .stores()
        .stream()
        .filter(this::mayHaveHeldIt)
        .map(store -> Place.somewhereIn(store.name()))
        .collect(Collectors.toSet()));
  }

  private boolean mayHaveHeldIt(Store store) {
    return switch (starts()) {
      case STRAIGHT_ON, RESTED -> false;
      case CHILLED -> store.kind() == Store.Kind.FRIDGE && store.air() != Air.BLAST;
      case FROZEN -> store.kind() == Store.Kind.FREEZER;
    };
  }

  private StartState starts() {
    StartState starts = step.step().starts();
    boolean brings = BRINGS.contains(step.step().name().split(" ", 2)[0]);
    return starts == null || brings || !book.feeding(step).isEmpty() ? StartState.RESTED : starts;
  }
}
