package ovenloom.cli.command;

import java.util.List;
import ovenloom.cli.sheet.View;
import ovenloom.model.plan.Plan;

/** The parts that a plan can be seen by, with their names. */
record Viewable(Plan plan) {

  Named<View> cooks() {
    return new Named<>("cook", plan.event()
        .cooks()
        .stream()
        .map(cook -> new Named.Thing<View>(new View.OfCook(cook.name()), List.of(cook.name())))
        .toList());
  }
}
