package ovenloom.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Stretch;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.menu.Filling;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** Where one step's food is, from the start of its run until the last of it is taken. */
record Journey(BatchStep step, Placement run, List<Leg> legs) {

  /**
   * A while in one place.
   *
   * @param hold where the oven's dial is, for food that waits in an oven that is on
   * @param out who takes it out at the end, for food in an oven
   */
  record Leg(Spot spot, Stretch when, @Nullable Setting hold, @Nullable HandsOn out) {

    /** The same, in the place of another leg as well. */
    Leg and(Leg other) {
      return new Leg(Spot.and(spot, other.spot), when, hold, out);
    }
  }

  static Journey of(Book book, BatchStep step) {
    Placement run = book.run(step);
    List<Leg> legs = new ArrayList<>();
    Spot own = own(book, step, run);
    List<Integer> racks = own instanceof Spot.InOven(String oven, List<Integer> each) ? each : List.of();
    legs.add(new Leg(own, run.when(), null, unloading(run.hands())));
    Stay stay = book.stay(step);
    for (Stay.Part part : stay == null ? List.<Stay.Part>of() : stay.parts()) {
      if (part.when().minutes() > 0) {
        Setting hold = part.where() instanceof Where.InOven(String oven, Setting mark) ? mark : null;
        HandsOn out = stay == null ? null : unloading(stay.hands());
        legs.add(new Leg(Spot.of(part.where(), racks), part.when(), hold, out));
      }
    }
    return new Journey(step, run, legs);
  }

  int end() {
    return legs.getLast().when().to();
  }

  /** Where the food is just before a minute in which some of it is taken. */
  Leg before(int minute) {
    Leg found = legs.getFirst();
    for (Leg leg : legs) {
      if (leg.when().from() < minute) {
        found = leg;
      }
    }
    return found;
  }

  /** Whether some of the food stays where it is when another share is taken. */
  boolean hasMoreAfter(int minute) {
    Spot here = before(minute).spot();
    return legs.stream()
        .anyMatch(leg -> leg.when().from() <= minute && minute < leg.when().to() && leg.spot().equals(here));
  }

  /** Where a batch is in a run that others share: on its own racks, burners or shelves. */
  static Spot own(Book book, BatchStep step, Placement run) {
    int before = 0;
    int own = 0;
    int all = 0;
    for (BatchStep each : book.steps(run)) {
      before = each.equals(step) ? all : before;
      int vessels = book.work().fillingsOf(each.index()).stream().mapToInt(Filling::count).sum();
      own = each.equals(step) ? vessels : own;
      all += vessels;
    }
    Spot together = spot(step, run);
    return own == 0 ? together : part(together, before, before + own, all, run);
  }

  /** A run in one vessel has fewer places than its batches would have by themselves, and no part of it is anyone's. */
  private static Spot part(Spot together, int from, int to, int all, Placement run) {
    return switch (together) {
      case Spot.InOven(String oven, List<Integer> racks) when racks.size() == all ->
        new Spot.InOven(oven, racks.subList(from, to));
      case Spot.OnBurners(List<String> burners) when burners.size() == all ->
        new Spot.OnBurners(burners.subList(from, to));
      case Spot.OnShelves(String store, List<String> shelves) when shelves.size() == all ->
        new Spot.OnShelves(
            store, run.shelves().subList(from, to).stream().map(each -> each.shelf()).toList());
      case Spot.InOven each -> each;
      case Spot.OnBurners each -> each;
      case Spot.OnShelves each -> each;
      case Spot.InMachine each -> each;
      case Spot.Bench each -> each;
    };
  }

  static Spot spot(BatchStep step, Placement run) {
    if (run.baking() != null) {
      return new Spot.InOven(run.baking().oven(), run.baking().racks());
    }
    if (!run.burners().isEmpty()) {
      return new Spot.OnBurners(run.burners());
    }
    if (!run.shelves().isEmpty()) {
      return new Spot.OnShelves(
          run.shelves().getFirst().store(), run.shelves().stream().map(each -> each.shelf()).toList());
    }
    List<Need.OnAppliance> machines = step.step().appliances();
    if (machines.isEmpty() || isWorkedAtThroughout(step)) {
      return new Spot.Bench();
    }
    return new Spot.InMachine(machines.getFirst().appliance());
  }

  private static boolean isWorkedAtThroughout(BatchStep step) {
    return step.step().hands().stream().anyMatch(hands -> hands.moment() instanceof Need.Moment.Throughout);
  }

  private static @Nullable HandsOn unloading(List<HandsOn> hands) {
    return hands.stream().filter(each -> each.act() == HandsOn.Act.UNLOAD).findFirst().orElse(null);
  }
}
