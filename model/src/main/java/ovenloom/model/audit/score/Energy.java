package ovenloom.model.audit.score;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ovenloom.model.kitchen.Burner;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.plan.OvenLog;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Stay;
import ovenloom.model.plan.Where;

/** What ovens and burners use, a point for each tenth of a kilowatt-hour. */
final class Energy {

  private static final int WATT_MINUTES_A_POINT = 6000;
  private static final String BURNERS = "burners";

  private Energy() {}

  static long points(Ledger plan) {
    return Shares.sum(wattMinutes(plan)) / WATT_MINUTES_A_POINT;
  }

  /** By oven, and all burners together; each rounded down. */
  static Map<String, Long> byHeat(Ledger plan) {
    Map<String, Long> points = new TreeMap<>();
    wattMinutes(plan).forEach((heat, wattMinutes) -> points.put(heat, wattMinutes / WATT_MINUTES_A_POINT));
    return points;
  }

  private static Map<String, Long> wattMinutes(Ledger plan) {
    Map<String, Long> wattMinutes = new TreeMap<>();
    for (OvenLog log : plan.plan().ovens()) {
      Oven oven = plan.event().kitchen().oven(log.oven());
      long used = oven == null ? 0 : log.spans().stream().mapToLong(span -> of(oven, span)).sum();
      wattMinutes.merge(log.oven(), used, Long::sum);
    }
    for (Placement run : plan.plan().placements()) {
      wattMinutes.merge(BURNERS, watts(plan, run.burners()) * run.when().minutes(), Long::sum);
    }
    for (Stay stay : plan.plan().stays()) {
      long used = stay.parts().stream().mapToLong(part -> of(plan, part)).sum();
      wattMinutes.merge(BURNERS, used, Long::sum);
    }
    return wattMinutes;
  }

  private static long of(Oven oven, OvenLog.Span span) {
    long watts = switch (span.doing()) {
      case WARMING -> oven.heating().watts();
      case AT -> oven.holding().watts();
      case COOLING -> 0;
    };
    return watts * span.when().minutes();
  }

  private static long of(Ledger plan, Stay.Part part) {
    return part.where() instanceof Where.OnBurner(List<String> burners)
        ? watts(plan, burners) * part.when().minutes()
        : 0;
  }

  private static long watts(Ledger plan, List<String> burners) {
    long watts = 0;
    for (String name : burners) {
      Burner burner = plan.event().kitchen().burner(name);
      watts += burner == null ? 0 : burner.power().watts();
    }
    return watts;
  }
}
