package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.heat.Kind;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.StartState;
import ovenloom.model.plan.Plan;

/** What is to be cold is no warmer than 8 C at the table, what is to be cool no warmer than 18 C or the room. */
class CoolAtTheTableTest {

  private static Plans jelly(Arrives arrives, String made) {
    return aPlanFor(aSupperOf(aDish("jelly").arrives(arrives)
        .kind(Kind.CUSTARD, Length.mm(40))
        .step(aStep("stir").takes(10).in("dish"))))
        .with(aRun("jelly", "stir", made, 10));
  }

  private static long lost(Plans plans) {
    Plan plan = plans.plan();
    return Reckoning.of(plan.event(), plan).atTheTableInAll();
  }

  @Test
  void made_early_enough_it_is_cold() {
    assertThat(lost(
        jelly(Arrives.COLD, "9:00").with(aStay("jelly", "stir", "9:10").shelf("19:00", "fridge", "top"))))
        .isZero();
  }

  @Test
  void an_hour_in_the_fridge_is_not_enough_and_none_is_worse() {
    long anHour = lost(jelly(Arrives.COLD, "17:50")
        .with(aStay("jelly", "stir", "18:00").shelf("19:00", "fridge", "top")));
    long none = lost(jelly(Arrives.COLD, "17:50").with(aStay("jelly", "stir", "18:00").counter("19:00")));

    assertThat(anHour).isPositive();
    assertThat(none).isGreaterThan(anHour);
  }

  @Test
  void what_is_to_be_cool_may_be_as_warm_as_the_room() {
    assertThat(lost(jelly(Arrives.COOL, "17:50").with(aStay("jelly", "stir", "18:00").counter("19:00"))))
        .isZero();
  }

  @Test
  void what_was_frozen_is_not_followed() {
    assertThat(lost(aPlanFor(aSupperOf(aDish("ice").arrives(Arrives.COLD)
        .step(aStep("thaw").takes(10).starts(StartState.FROZEN).in("dish"))))
        .with(aRun("ice", "thaw", "17:50", 10))
        .with(aStay("ice", "thaw", "18:00").counter("19:00")))).isZero();
  }
}
