package ovenloom.model.why;

import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import ovenloom.model.audit.Events;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.score.Reckoning;
import ovenloom.model.menu.Arrives;
import ovenloom.model.plan.Placement;
import ovenloom.model.plan.Plan;

/** A gratin, a salad and a table to lay, by one host, for 19:00. */
final class GratinSupper {

  private static final Events SUPPER = aSupperOf(
      aDish("gratin")
          .step(aStep("slice").takes(15).hands().in("dish").keepsOnTheCounter(30))
          .step(aStep("bake").takes(30).bake(180)),
      aDish("salad").arrives(Arrives.COOL).step(aStep("toss").hands().in("bowl").keepsIn("fridge", 60)),
      aChore("table").step(aStep("lay").takes(15).hands()));

  private GratinSupper() {}

  static Plan plan() {
    Plans plan = aPlanFor(SUPPER)
        .with(aRun("table", "lay", "16:00", 15).work("Host"))
        .with(aRun("gratin", "slice", "17:50", 15).work("Host"))
        .with(aStay("gratin", "slice", "18:05").counter("18:16"))
        .with(aRun("gratin", "bake", "18:16", 30).oven("oven", 180).load("Host").unload("Host"))
        .with(aStay("gratin", "bake", "18:46").counter("19:00"))
        .with(aRun("salad", "toss", "18:20", 10).work("Host"))
        .with(aStay("salad", "toss", "18:30").shelf("18:50", "fridge", "top").counter("19:00"))
        .with(aLog("oven").warming(180, "18:00", "18:16").at(180, "18:16", "18:46"));
    return plan.score(Reckoning.of(SUPPER.event(), plan.plan())).plan();
  }

  static Placement run(Plan plan, String dish, String step) {
    return plan.placement(dish, step, 1);
  }
}
