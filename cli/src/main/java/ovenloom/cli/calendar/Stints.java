package ovenloom.cli.calendar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ovenloom.cli.calendar.Slot.Doing;
import ovenloom.cli.sheet.Sinkful;
import ovenloom.model.menu.Batches;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Wash;

/** The stretches of a plan in which someone's hands are taken. */
final class Stints {

  private final Plan plan;
  private final List<Stint> all = new ArrayList<>();

  private Stints(Plan plan) {
    this.plan = plan;
  }

  static List<Stint> of(Plan plan) {
    Stints stints = new Stints(plan);
    plan.placements().forEach(stints::run);
    plan.stays().forEach(stints::stay);
    stints.washes();
    return stints.all;
  }

  private void run(Placement run) {
    int work = 0;
    for (HandsOn hands : run.hands()) {
      int number = hands.act() == HandsOn.Act.WORK ? ++work : 1;
      boolean begins = hands.act() != HandsOn.Act.UNLOAD && hands.when().from() == run.when().from();
      add(doing(hands.act()), run.dish(), run.step(), run.batches(), number, hands, begins);
    }
  }

  private static Doing doing(HandsOn.Act act) {
    return switch (act) {
      case LOAD -> Doing.LOAD;
      case WORK -> Doing.WORK;
      case UNLOAD -> Doing.UNLOAD;
    };
  }

  private void stay(Stay stay) {
    stay.hands()
        .forEach(hands -> add(Doing.UNLOAD_LATER, stay.dish(), stay.step(), stay.batches(), 1, hands, false));
  }

  private void add(
      Doing doing, String dish, String step, Batches batches, int number, HandsOn hands, boolean begins) {
    boolean isTakenOut = doing == Doing.UNLOAD || doing == Doing.UNLOAD_LATER;
    String name = dish + ": " + (isTakenOut ? "out of the oven" : step) + new Some(plan, dish, step, batches);
    all.add(new Stint(Slot.of(doing, dish, step, batches, number), batches, hands.cooks(), hands.when(), name,
        begins));
  }

  /** The first vessel of a sinkful gives it its slot. */
  private void washes() {
    Map<String, Integer> numbers = new HashMap<>();
    for (Sinkful sinkful : Sinkful.of(plan.washes())) {
      Wash first = sinkful.washes().getFirst();
      Slot slot = Slot.wash(first.vessel(), numbers.merge(first.vessel(), 1, Integer::sum));
      all.add(new Stint(slot, Batches.only(1), List.of(sinkful.cook()), sinkful.when(), "Wash up", false));
    }
  }
}
