package ovenloom.cli.calendar;

import java.util.List;
import ovenloom.cli.sheet.Act;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Batches;

/**
 * A stretch in which someone's hands are taken.
 *
 * @param name what it is where no act says so
 * @param begins whether a step begins with it, and names it
 */
record Stint(Slot slot, Batches batches, List<String> cooks, Stretch when, String name, boolean begins) {

  /** Where an act is not told. */
  static final int NOT_HERE = Integer.MAX_VALUE;

  Stint {
    cooks = List.copyOf(cooks);
  }

  /**
   * How near this is to what a cook does: less is nearer. What is done as a stretch begins is told in it; so is what is done to
   * its dish as it ends, or at the oven's door, where the cook still stands.
   */
  int distance(Act act, String cook) {
    if (!cooks.contains(cook)) {
      return NOT_HERE;
    }
    if (act.at() == when.from()) {
      return isAsked(act) ? 0 : isOfItsDish(act) ? 1 : 2;
    }
    return act.at() == when.to() && (isOfItsDish(act) || isAtADoor()) ? 3 : NOT_HERE;
  }

  private boolean isAsked(Act act) {
    BatchStep step = act.step();
    return step == null ? slot.doing() == Slot.Doing.WASH && act.turn() == Act.Turn.WASH
        : isOfItsDish(act) && slot.step().equals(step.step().name()) && batches.holds(step.batches().first());
  }

  private boolean isOfItsDish(Act act) {
    return act.step() != null && act.thing().equals(slot.of());
  }

  private boolean isAtADoor() {
    return slot.doing() == Slot.Doing.UNLOAD || slot.doing() == Slot.Doing.UNLOAD_LATER;
  }

  /** As an entry, by the name of the step it begins, or by the first thing done to its dish. */
  Entry entry(List<Act> acts) {
    String title = acts.stream()
        .filter(act -> !begins && (isOfItsDish(act) || isAsked(act)))
        .findFirst()
        .map(Entry::headline)
        .orElse(name);
    return new Entry(slot, cooks, when, title, acts);
  }
}
