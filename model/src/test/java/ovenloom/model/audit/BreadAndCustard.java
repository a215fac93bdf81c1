package ovenloom.model.audit;

import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStage;
import static ovenloom.model.audit.Steps.aStep;

/**
 * What one oven bakes in tests. It starts at 20 C and warms by 10 K a minute: 220 C takes 20 minutes. It is half as far above
 * the room after 14 minutes: 220 C to 120 C. It takes 3 kW to warm and 1 kW to hold.
 */
final class BreadAndCustard {

  private BreadAndCustard() {}

  static Events supper() {
    return aSupperOf(
        aDish("bread").batches(2).step(aStep("bake").takes(30).bake(220)),
        aDish("custard").step(aStep("bake").takes(30).bake(120)),
        aDish("lamb").step(aStep("roast").takes(60).bake(aStage(220, 20), aStage(160, null))));
  }

  static Runs bread(String from) {
    return aRun("bread", "bake", from, 30).batch(1).oven("oven", 220);
  }

  static Runs moreBread(String from) {
    return aRun("bread", "bake", from, 30).batch(2).oven("oven", 220);
  }

  static Runs custard(String from) {
    return aRun("custard", "bake", from, 30).oven("oven", 120);
  }

  /** Bread from 17:00 to 17:30, warmed for. */
  static Logs afterBread() {
    return aLog("oven").warming(220, "16:40", "17:00").at(220, "17:00", "17:30");
  }
}
