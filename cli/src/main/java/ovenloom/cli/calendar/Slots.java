package ovenloom.cli.calendar;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ovenloom.cli.calendar.Slot.Doing;
import ovenloom.cli.sheet.LooseActs;
import ovenloom.model.kitchen.Availability;
import ovenloom.model.kitchen.Vessel;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Course;
import ovenloom.model.menu.Event;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Keeps;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Work;

/** Every slot that some plan of an event may use. */
final class Slots {

  private final Event event;
  private final Set<Slot> all = new LinkedHashSet<>();

  private Slots(Event event) {
    this.event = event;
  }

  static Set<Slot> of(Event event) {
    Slots slots = new Slots(event);
    Work work = Work.of(event);
    work.steps().forEach(slots::step);
    slots.washes(work);
    event.courses().stream().map(Course::name).map(Slot::table).forEach(slots.all::add);
    for (int moment = 1; moment <= LooseActs.most(event); moment++) {
      slots.all.add(Slot.moment(moment));
    }
    return slots.all;
  }

  private void step(BatchStep step) {
    List<Need.Hands> hands = step.step().hands();
    for (int number = 1; number <= hands.size(); number++) {
      add(Doing.WORK, step, number);
    }
    boolean isThroughout = hands.stream()
        .anyMatch(each -> each.moment() instanceof Need.Moment.Throughout);
    boolean isFirst = hands.stream().anyMatch(each -> each.moment() instanceof Need.Moment.First);
    boolean isBaked = step.step().bake() != null;
    if (!isThroughout && isBaked) {
      add(Doing.LOAD, step, 1);
      add(Doing.UNLOAD, step, 1);
    }
    Keeps keeps = step.step().keeps();
    if (isBaked && keeps != null && keeps.oven() != null) {
      add(Doing.UNLOAD_LATER, step, 1);
    }
    if (!isThroughout && !isFirst && !isBaked) {
      add(Doing.START, step, 1);
    }
  }

  private void add(Doing doing, BatchStep step, int number) {
    all.add(Slot.of(doing, step.dish().name(), step.step().name(), step.batches(), number));
  }

  /** A vessel is washed where more are filled than there are. */
  private void washes(Work work) {
    Map<String, Integer> filled = new LinkedHashMap<>();
    for (Filling filling : work.fillings()) {
      filled.merge(filling.vessel(), filling.count(), Integer::sum);
    }
    filled.forEach((vessel, pieces) -> {
      for (int number = 1; number <= pieces - alwaysThere(vessel); number++) {
        all.add(Slot.wash(vessel, number));
      }
    });
  }

  private int alwaysThere(String name) {
    Vessel vessel = event.kitchen().vessel(name);
    return vessel == null || !vessel.open().equals(Availability.ALWAYS) ? 0 : vessel.count();
  }
}
