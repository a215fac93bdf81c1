package ovenloom.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.measure.Stretch;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Plan;

/** Cuts each cook's hours to the work in a plan, and to the minutes in which somebody must be there. */
final class TighterHours {

  private static final int SHORTEST_PAUSE = 10;

  private final Tightening kitchen;
  private final Plan plan;
  private final Random random;
  private final double strength;

  TighterHours(Tightening kitchen, Plan plan, Random random, double strength) {
    this.kitchen = kitchen;
    this.plan = plan;
    this.random = random;
    this.strength = strength;
  }

  void tighten() {
    for (Cook cook : kitchen.event().cooks()) {
      List<Stretch> busy = busy(cook.name());
      if (busy.isEmpty()) {
        offer(cook.name(), List.of());
      } else {
        int air = (int) ((1 - strength) * 60 * random.nextDouble());
        away(cook.name(), cook.hours().getFirst().from(), busy.getFirst().from() - air);
        pauses(cook.name(), busy, air);
        away(cook.name(), busy.getLast().to() + air, cook.hours().getLast().to());
      }
    }
  }

  private void pauses(String cook, List<Stretch> busy, int air) {
    int free = busy.getFirst().to();
    for (Stretch work : busy) {
      if (work.from() - air > free + air + SHORTEST_PAUSE && random.nextDouble() < strength) {
        away(cook, free + air, work.from() - air);
      }
      free = Math.max(free, work.to());
    }
  }

  /** Takes a stretch out of a cook's hours; where somebody must be there, as much of it as may be, by halves. */
  private void away(String name, int from, int to) {
    boolean refused = from < to && !offer(name, without(name, from, to));
    if (refused && to - from > 2 * SHORTEST_PAUSE) {
      int middle = (from + to) / 2;
      away(name, from, middle);
      away(name, middle, to);
    }
  }

  private List<Stretch> without(String name, int from, int to) {
    List<Stretch> hours = new ArrayList<>();
    for (Cook cook : kitchen.event().cooks()) {
      for (Stretch old : cook.name().equals(name) ? cook.hours() : List.<Stretch>of()) {
        add(hours, old.from(), Math.min(old.to(), from));
        add(hours, Math.max(old.from(), to), old.to());
      }
    }
    return hours;
  }

  private static void add(List<Stretch> hours, int from, int to) {
    if (from < to) {
      hours.add(new Stretch(from, to));
    }
  }

  private boolean offer(String name, List<Stretch> hours) {
    List<Cook> cooks = new ArrayList<>();
    for (Cook each : kitchen.event().cooks()) {
      List<Stretch> then = each.name().equals(name) ? hours : each.hours();
      if (!then.isEmpty()) {
        List<Stretch> breaks = each.breaks()
            .stream()
            .filter(pause -> then.stream().anyMatch(hour -> hour.encloses(pause)))
            .toList();
        cooks.add(new Cook(each.name(), then, breaks, each.skills()));
      }
    }
    return kitchen.offer(Changed.cooks(kitchen.event(), cooks), "hands", "someone there",
        "warming and cooling");
  }

  private List<Stretch> busy(String cook) {
    Stream<Stretch> hands = plan
        .placements()
        .stream()
        .flatMap(run -> run.hands().stream())
        .filter(each -> each.cooks().contains(cook))
        .map(HandsOn::when);
    Stream<Stretch> washes = plan
        .washes()
        .stream()
        .filter(wash -> wash.cook().equals(cook))
        .map(wash -> wash.when());
    return Stream.concat(hands, washes).sorted(Comparator.comparingInt(Stretch::from)).toList();
  }
}
