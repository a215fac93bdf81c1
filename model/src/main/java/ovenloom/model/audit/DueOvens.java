package ovenloom.model.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.plan.OvenLog;

/** What each oven has to do for the bakes and stays of a plan. */
public final class DueOvens {

  private DueOvens() {}

  /** Worked out anew; as the plan has it for an oven whose uses do not share the dial. */
  public static List<OvenLog> of(Case plan) {
    Map<String, List<OvenUse>> uses = OvenUse.of(plan);
    List<OvenLog> logs = new ArrayList<>();
    for (Oven oven : plan.event().kitchen().ovens()) {
      List<OvenUse> own = uses.getOrDefault(oven.name(), List.of());
      if (!own.isEmpty() && OvenUse.shareTheDial(own)) {
        logs.add(new OvenLog(oven.name(), new DueLog(oven, plan.event().cooks(), own).spans()));
      } else {
        plan.plan().ovens().stream().filter(log -> log.oven().equals(oven.name())).forEach(logs::add);
      }
    }
    return logs;
  }
}
