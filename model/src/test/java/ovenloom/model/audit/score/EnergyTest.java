package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.menu.Wish;

/** An oven takes 3 kW to warm and 1 kW to hold, a burner 1.5 kW; a point is 0.1 kWh, 6 kW-minutes. */
class EnergyTest {

  @Test
  void two_minutes_of_warming_are_a_point_and_six_of_holding() {
    assertThat(energy(kitchen().with(aLog("oven").warming(180, "15:00", "15:02")))).isEqualTo(1);
    assertThat(energy(kitchen().with(aLog("oven").warming(180, "15:00", "15:01")))).isZero();
    assertThat(energy(kitchen().with(aLog("oven").at(180, "15:00", "15:06")))).isEqualTo(1);
    assertThat(energy(kitchen().with(aLog("oven").at(180, "15:00", "15:05")))).isZero();
  }

  @Test
  void cooling_takes_nothing() {
    assertThat(energy(kitchen().with(aLog("oven").cooling(180, "15:00", "18:00")))).isZero();
  }

  @Test
  void four_minutes_of_a_burner_are_a_point() {
    assertThat(energy(kitchen().with(aRun("stew", "cook", "15:00", 4).burners("small")))).isEqualTo(1);
    assertThat(energy(kitchen().with(aRun("stew", "cook", "15:00", 3).burners("small")))).isZero();
    assertThat(energy(kitchen().with(aRun("stew", "cook", "15:00", 4).burners("small", "large"))))
        .isEqualTo(2);
  }

  @Test
  void a_burner_turned_low_counts_as_one() {
    assertThat(energy(kitchen().with(aStay("stew", "cook", "15:00").burners("15:40", "small"))))
        .isEqualTo(10);
    assertThat(energy(kitchen().with(aStay("stew", "cook", "15:00").counter("15:40")))).isZero();
  }

  @Test
  void all_of_the_event_is_added_before_it_is_rounded() {
    assertThat(energy(kitchen()
        .with(aLog("oven").warming(180, "15:00", "15:01").at(180, "15:01", "15:02"))
        .with(aRun("stew", "cook", "15:00", 1).burners("small"))
        .with(aStay("stew", "cook", "15:01").burners("15:02", "small")))).as("3 + 1 + 1.5 + 1.5 = 7")
        .isEqualTo(1);
  }

  @Test
  void what_nobody_has_takes_nothing() {
    assertThat(energy(kitchen()
        .with(aLog("kiln").warming(180, "15:00", "16:00"))
        .with(aRun("stew", "cook", "15:00", 60).burners("bonfire")))).isZero();
  }

  private static Plans kitchen() {
    return aPlanFor(aSupperOf(aDish("stew").step(aStep("cook"))));
  }

  private static long energy(Plans plan) {
    return Counting.points(Wish.ENERGY, plan);
  }
}
