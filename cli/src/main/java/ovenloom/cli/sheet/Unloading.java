package ovenloom.cli.sheet;

import java.util.Collections;
import java.util.Objects;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;

/** Taking food out of an oven, in the last minutes it is in there. */
record Unloading(Book book, String dish, int batch, String oven, HandsOn hands) {

  /** The minute at which the food of a run is taken out, as the sheet tells it; its end where it is in no oven, or stays in it. */
  static int of(Book book, Placement run) {
    Baking baking = run.baking();
    return run.hands()
        .stream()
        .filter(hands -> hands.act() == HandsOn.Act.UNLOAD && baking != null)
        .mapToInt(hands -> new Unloading(book, run.dish(), run.batches().first(),
            Objects.requireNonNull(baking).oven(), hands).at())
        .findFirst()
        .orElse(run.when().to());
  }

  /** Whether it takes a while. */
  boolean isLong() {
    return hands.when().minutes() > 1;
  }

  /** Whether the door is opened for something else to go in as it begins: one opens it once, and takes out first. */
  boolean sharesADoor() {
    return book.plan()
        .placements()
        .stream()
        .filter(run -> run.when().from() == hands.when().from())
        .map(Placement::baking)
        .anyMatch(baking -> baking != null && baking.oven().equals(oven));
  }

  /** Whether who takes it out has work on other food to begin as that is done. */
  private boolean isWantedElsewhere() {
    return book.plan()
        .placements()
        .stream()
        .filter(run -> !dish.equals(run.dish()) || !run.batches().holds(batch))
        .flatMap(run -> run.hands().stream())
        .anyMatch(next -> next.act() == HandsOn.Act.WORK && next.when().from() == hands.when().to()
            && !Collections.disjoint(next.cooks(), hands.cooks()));
  }

  /** The minute at which the door is opened for it: the last of the bake, which is told as its end where nothing hangs on it. */
  int at() {
    return isLong() || sharesADoor() || isWantedElsewhere() ? hands.when().from() : hands.when().to();
  }
}
