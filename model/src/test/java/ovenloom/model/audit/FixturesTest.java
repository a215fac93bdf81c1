package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;

class FixturesTest {

  @Test
  void a_plan_put_together_run_by_run_is_a_plan_for_the_work_of_its_event() {
    Events supper = aSupperOf(aDish("bread")
        .step(aStep("shape").takes(15).hands().in("tray").keepsOnTheCounter(60))
        .step(aStep("bake").takes(30).bake(230)));

    Case audited = aPlanFor(supper)
        .with(aRun("bread", "bake", "18:15", 30).oven("oven", 230).load("Host").unload("Host"))
        .with(aRun("bread", "shape", "17:45", 15).work("Host"))
        .with(aStay("bread", "shape", "18:00").counter("18:15"))
        .with(aStay("bread", "bake", "18:45").counter("19:00"))
        .with(aLog("oven").warming(230, "17:54", "18:15").at(230, "18:15", "18:45"))
        .underAudit();

    assertThat(audited.work().steps()).hasSize(2).allSatisfy(step -> {
      assertThat(audited.run(step)).isNotNull();
      assertThat(audited.stay(step)).isNotNull();
    });
    assertThat(audited.plan().placements().getFirst().step()).isEqualTo("shape");
  }
}
