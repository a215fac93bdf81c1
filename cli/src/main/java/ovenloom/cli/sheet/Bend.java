package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.Cards;
import ovenloom.model.life.Starts;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.StartState;
import ovenloom.model.plan.Baking;

/** Why a bake does not take the minutes of its card. */
record Bend(Book book, BatchStep step, Need.Bake bake, Baking baking) {

  /** {@code  12 min more than on the card: straight from the fridge.}; nothing where it takes what the card says. */
  String why() {
    int booked = baking.stages().stream().mapToInt(stage -> stage.when().minutes()).sum();
    int more = booked - step.minutes();
    if (more == 0) {
      return "";
    }
    String than = " " + Math.abs(more) + " min " + (more > 0 ? "more" : "less") + " than on the card";
    List<String> reasons = new ArrayList<>();
    Starts.Start meant = new Starts(new Cards(book.work())).of(step).getFirst();
    if (meant.state() != baking.state()) {
      reasons.add(comesCold() ? "still cold from the fridge" : from(baking.state(), meant.state()));
    }
    if (!isAtItsMarks()) {
      reasons.add("the card says " + bake.stages().getLast().written().written());
    }
    if (reasons.isEmpty()) {
      reasons.add(more > 0 ? "it goes in a little colder" : "it goes in a little warmer");
    }
    return than + ": " + String.join(", and ", reasons) + ".";
  }

  /** Whether it has been out of the fridge for a while, and is booked as from there. */
  private boolean comesCold() {
    int at = baking.stages().getFirst().when().from();
    return baking.state() == StartState.CHILLED
        && book.feeding(step)
            .stream()
            .map(before -> Journey.of(book, before).before(at).spot())
            .noneMatch(Spot.OnShelves.class::isInstance);
  }

  private static String from(StartState state, StartState meant) {
    return switch (state) {
      case STRAIGHT_ON -> "still hot";
      case RESTED -> meant == StartState.STRAIGHT_ON ? "no longer hot" : "not straight from the cold";
      case CHILLED -> "straight from the fridge";
      case FROZEN -> "straight from the freezer";
    };
  }

  private boolean isAtItsMarks() {
    Oven oven = Objects.requireNonNull(book.event().kitchen().oven(baking.oven()));
    for (int i = 0; i < baking.stages().size(); i++) {
      Need.Stage stage = bake.stages().get(i);
      Double by = oven.converts(stage.mode(), baking.mode());
      Setting best = oven.dial().nearest(stage.written().temperature().plusKelvins(by == null ? 0 : by));
      if (!best.equals(baking.stages().get(i).mark())) {
        return false;
      }
    }
    return true;
  }
}
