package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.Map;
import org.junit.jupiter.api.Test;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Wish;
import ovenloom.model.plan.Plan;
import ovenloom.model.plan.Score;

/** A supper planned and counted by hand: gratin, salad, and a table to lay. */
class WholePlanTest {

  private static final Map<Wish, Long> POINTS = Map.of(
      Wish.FRESHNESS, 1L,
      Wish.CALM, 5 + 1 + 10 + 1 + 2 * (15 + 1 + 10 + 1) + 42L / 20,
      Wish.ENERGY, (16 * 3 + 30 * 1) / 6L);

  private final Events supper = aSupperOf(
      aDish("gratin")
          .step(aStep("slice").takes(15).hands().in("dish").keepsOnTheCounter(30))
          .step(aStep("bake").takes(30).bake(180)),
      aDish("salad").arrives(Arrives.COOL).step(aStep("toss").hands().in("bowl").keepsIn("fridge", 60)),
      aChore("table").step(aStep("lay").takes(15).hands()));

  @Test
  void every_rule_is_content_with_it() {
    assertThat(Audit.of(supper.event(), plan("18:00"))).isEmpty();
  }

  @Test
  void with_the_oven_on_a_minute_too_late_one_rule_is_not() {
    assertThat(Audit.of(supper.event(), plan("18:01"))).isNotEmpty()
        .allSatisfy(each -> assertThat(each.rule()).isIn("warming and cooling", "score"));
  }

  private Plan plan(String on) {
    long wishes = POINTS.values().stream().mapToLong(Long::longValue).sum();
    return aPlanFor(supper)
        .with(aRun("table", "lay", "16:00", 15).work("Host"))
        .with(aRun("gratin", "slice", "17:50", 15).work("Host"))
        .with(aStay("gratin", "slice", "18:05").counter("18:16"))
        .with(aRun("gratin", "bake", "18:16", 30).oven("oven", 180).load("Host").unload("Host"))
        .with(aStay("gratin", "bake", "18:46").counter("19:00"))
        .with(aRun("salad", "toss", "18:20", 10).work("Host"))
        .with(aStay("salad", "toss", "18:30").shelf("18:50", "fridge", "top").counter("19:00"))
        .with(aLog("oven").warming(180, on, "18:16").at(180, "18:16", "18:46"))
        .score(new Score(0, Map.of("gratin", 0L), POINTS, wishes, 180 + 70 + 44 + 40))
        .plan();
  }
}
