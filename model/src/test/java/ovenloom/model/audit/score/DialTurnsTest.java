package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Runs.aStage;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.Runs;
import ovenloom.model.audit.Waits;
import ovenloom.model.menu.Wish;

class DialTurnsTest {

  @Test
  void the_first_mark_of_an_oven_is_free() {
    assertThat(dial(bread("15:00", 230))).isZero();
  }

  @Test
  void another_mark_costs_five_whether_the_oven_was_off_between_or_not() {
    assertThat(dial(bread("15:00", 230), tart("15:30", 180))).isEqualTo(5);
    assertThat(dial(bread("15:00", 230), tart("18:00", 180))).isEqualTo(5);
  }

  @Test
  void the_same_mark_again_is_free() {
    assertThat(dial(bread("15:00", 200), tart("15:30", 200))).isZero();
    assertThat(dial(bread("15:00", 200), tart("18:00", 200))).isZero();
  }

  @Test
  void two_that_share_the_oven_at_one_mark_are_one() {
    assertThat(dial(bread("15:00", 200), tart("15:10", 200))).isZero();
  }

  @Test
  void there_and_back_are_two_turns() {
    assertThat(dial(bread("15:00", 230), tart("15:30", 180), bread("16:00", 230))).isEqualTo(10);
  }

  @Test
  void each_oven_has_a_first_mark_of_its_own() {
    assertThat(dial(bread("15:00", 230), aRun("tart", "bake", "15:30", 30).oven("range", 180))).isZero();
  }

  @Test
  void the_stages_of_a_bake_are_free() {
    assertThat(dial(bread("15:00", 230).stages(aStage(230, "15:00", "15:10"), aStage(200, "15:10", "15:30"))))
        .isZero();
  }

  @Test
  void what_stays_after_the_change_of_stage_shares_it_and_what_comes_later_at_another_mark_costs() {
    var staged = bread("15:00", 230).stages(aStage(230, "15:00", "15:10"), aStage(200, "15:10", "15:30"));

    assertThat(dial(staged, tart("15:20", 200))).isZero();
    assertThat(dial(staged, tart("15:30", 180))).isEqualTo(5);
    assertThat(dial(staged, tart("16:00", 230))).as("back to the first stage's mark").isEqualTo(5);
  }

  @Test
  void another_bakes_stage_at_another_time_makes_no_turn_free() {
    var staged = bread("15:00", 230).stages(aStage(230, "15:00", "15:10"), aStage(200, "15:10", "15:30"));

    assertThat(dial(staged, tart("16:00", 230), aRun("pie", "bake", "17:00", 30).oven("oven", 200)))
        .isEqualTo(10);
  }

  @Test
  void turning_it_down_to_hold_costs_and_off_does_not() {
    assertThat(dial(bread("15:00", 230), aStay("bread", "bake", "15:30").oven("16:00", "oven", 80)))
        .isEqualTo(5);
    assertThat(dial(bread("15:00", 80), aStay("bread", "bake", "15:30").oven("16:00", "oven", 80))).isZero();
    assertThat(dial(bread("15:00", 230), aStay("bread", "bake", "15:30").ovenThatIsOff("16:00", "oven")))
        .isZero();
  }

  private static Runs bread(String from, int mark) {
    return aRun("bread", "bake", from, 30).oven("oven", mark);
  }

  private static Runs tart(String from, int mark) {
    return aRun("tart", "bake", from, 30).oven("oven", mark);
  }

  private static long dial(Runs... runs) {
    return Counting.points(Wish.DIAL, plan(runs));
  }

  private static long dial(Runs run, Waits stay) {
    return Counting.points(Wish.DIAL, plan(run).with(stay));
  }

  private static Plans plan(Runs... runs) {
    Plans plan = aPlanFor(
        aSupperOf(aDish("bread").step(aStep("bake").bake(230)), aDish("tart").step(aStep("bake"))));
    for (Runs run : runs) {
      plan.with(run);
    }
    return plan;
  }
}
