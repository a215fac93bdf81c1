package ovenloom.model.audit.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import ovenloom.model.measure.Stretch;
import ovenloom.model.measure.Stretches;
import ovenloom.model.menu.BatchStep;
import ovenloom.model.plan.HandsOn;
import ovenloom.model.plan.Placement;

/**
 * When cooks have their hands full: hands and washes, but not serving.
 *
 * @param byCook by name
 */
record Busy(Map<String, Stretches> byCook) {

  static Busy in(Ledger plan) {
    Map<String, List<Stretch>> work = new TreeMap<>();
    for (Placement run : plan.plan().placements()) {
      BatchStep step = plan.stepOf(run);
      if (step == null || !step.step().serve()) {
        run.hands().forEach(hands -> add(work, hands));
      }
    }
    plan.plan().stays().forEach(stay -> stay.hands().forEach(hands -> add(work, hands)));
    plan.plan().washes().forEach(wash -> add(work, wash.cook(), wash.when()));
    Map<String, Stretches> byCook = new TreeMap<>();
    work.forEach((cook, stretches) -> byCook.put(cook, new Stretches(stretches)));
    return new Busy(byCook);
  }

  private static void add(Map<String, List<Stretch>> work, HandsOn hands) {
    new TreeSet<>(hands.cooks()).forEach(cook -> add(work, cook, hands.when()));
  }

  private static void add(Map<String, List<Stretch>> work, String cook, Stretch when) {
    work.computeIfAbsent(cook, name -> new ArrayList<>()).add(when);
  }

  /** Minutes of all cooks inside some stretches; two at once are two. */
  long cookMinutes(Stretches when) {
    return byCook.values().stream().mapToLong(work -> work.shared(when).minutes()).sum();
  }

  Stretches of(String cook) {
    return byCook.getOrDefault(cook, Stretches.of());
  }

  /** When anybody is busy. */
  Stretches anybody() {
    return Stretches.any(byCook.values());
  }
}
