package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.BreadAndCustard.afterBread;
import static ovenloom.model.audit.BreadAndCustard.bread;
import static ovenloom.model.audit.BreadAndCustard.custard;
import static ovenloom.model.audit.BreadAndCustard.moreBread;
import static ovenloom.model.audit.BreadAndCustard.supper;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Oven;

/** What the oven does before its first use and while it is used; figures as in {@link BreadAndCustard}. */
class WarmingAndCoolingTest {

  private final KitchenRule rule = new WarmingAndCooling();
  private final Events supper = supper();

  private Plans lamb(String turned, String to) {
    return aPlanFor(supper).with(aRun("lamb", "roast", Clock.at("18:00"), Clock.at(to) - Clock.at("18:00"))
        .oven("oven", 220)
        .stages(Runs.aStage(220, "18:00", turned), Runs.aStage(160, turned, to)));
  }

  @Test
  void a_cold_oven_is_switched_on_20_minutes_before_bread_at_220_goes_in() {
    var log = aLog("oven").warming(220, "17:40", "18:00").at(220, "18:00", "18:30");

    assertThat(aPlanFor(supper).with(bread("18:00")).with(log).heldAgainst(rule)).isEmpty();
  }

  @Test
  void nineteen_minutes_are_a_minute_short_and_21_a_minute_wasted() {
    var late = aLog("oven").warming(220, "17:41", "18:00").at(220, "18:00", "18:30");
    var early = aLog("oven").warming(220, "17:39", "18:00").at(220, "18:00", "18:30");

    assertThat(aPlanFor(supper).with(bread("18:00")).with(late).heldAgainst(rule)).singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.when()).isEqualTo(between("17:40", "17:41"));
          assertThat(each.what()).isEqualTo("is off, and ought to be warming to 220 C still");
        });
    assertThat(aPlanFor(supper).with(bread("18:00")).with(early).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.when()).isEqualTo(between("17:39", "17:40")));
  }

  @Test
  void bread_is_not_baked_in_an_oven_that_is_never_switched_on() {
    assertThat(aPlanFor(supper).with(bread("18:00")).heldAgainst(rule)).extracting(Break::off)
        .containsExactly(20L, 30L);
  }

  @Test
  void what_is_written_in_two_lines_is_the_same_as_in_one() {
    var log = aLog("oven").warming(220, "17:40", "17:50")
        .warming(220, "17:50", "18:00")
        .at(220, "18:00", "18:10")
        .at(220, "18:10", "18:30");

    assertThat(aPlanFor(supper).with(bread("18:00")).with(log).heldAgainst(rule)).isEmpty();
  }

  @Test
  void nobody_leaves_it_on_or_does_two_things_with_it_at_once() {
    var on = aLog("oven").warming(220, "17:40", "18:00").at(220, "18:00", "18:31");
    var twice = aLog("oven").warming(220, "17:40", "18:00")
        .at(220, "18:00", "18:30")
        .at(220, "18:20", "18:25");

    assertThat(aPlanFor(supper).with(bread("18:00")).with(on).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("is at 220 C still, and ought to be off"));
    assertThat(aPlanFor(supper).with(bread("18:00")).with(twice).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(5));
  }

  @Test
  void an_oven_nobody_uses_stays_off_and_one_that_is_not_there_does_nothing() {
    assertThat(aPlanFor(supper).with(aLog("oven").warming(220, "17:40", "18:00")).heldAgainst(rule))
        .hasSize(1);
    assertThat(aPlanFor(supper).with(aLog("kiln")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("kiln"));
  }

  @Test
  void uses_at_one_mark_that_touch_are_one() {
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(moreBread("17:30"))
        .with(afterBread().at(220, "17:30", "18:00"))
        .heldAgainst(rule)).isEmpty();
  }

  /** From 200 K above the room to 140 K above it: 14 minutes times the binary logarithm of 10/7, which is 7.2. */
  @Test
  void a_roast_turned_down_to_160_has_8_minutes_of_cooling_in_its_second_stage() {
    var log = aLog("oven").warming(220, "17:40", "18:00")
        .at(220, "18:00", "18:20")
        .cooling(160, "18:20", "18:28")
        .at(160, "18:28", "19:00");
    var sudden = aLog("oven").warming(220, "17:40", "18:00")
        .at(220, "18:00", "18:20")
        .at(160, "18:20", "19:00");

    assertThat(lamb("18:20", "19:00").with(log).heldAgainst(rule)).isEmpty();
    assertThat(lamb("18:20", "19:00").with(sudden).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(8));
  }

  @Test
  void a_second_stage_of_5_minutes_is_over_before_the_oven_has_cooled() {
    var log = aLog("oven").warming(220, "17:40", "18:00")
        .at(220, "18:00", "18:20")
        .cooling(160, "18:20", "18:25");

    assertThat(lamb("18:20", "18:25").with(log).heldAgainst(rule)).isEmpty();
  }

  /** To 60 K above the room: 14 minutes times the binary logarithm of 10/3, which is 24.3. */
  @Test
  void bread_that_waits_at_80_cools_with_the_oven_for_25_minutes() {
    var log = afterBread().cooling(80, "17:30", "17:55").at(80, "17:55", "18:10");

    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(aStay("bread", "bake", "17:30").oven("18:10", "oven", 80))
        .with(log)
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void the_oven_is_warmed_in_the_mode_of_what_goes_in_next() {
    var fan = aRun("custard", "bake", "17:44", 30).oven("oven", 120).mode(Oven.FAN);

    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(fan)
        .with(afterBread().mode(Oven.FAN).cooling(120, "17:30", "17:44").at(120, "17:44", "18:14"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(fan)
        .with(afterBread().cooling(120, "17:30", "17:44").mode(Oven.FAN).at(120, "17:44", "18:14"))
        .heldAgainst(rule)).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(14));
  }

  @Test
  void where_two_bakes_want_two_marks_at_once_only_the_one_dial_has_something_to_say() {
    assertThat(aPlanFor(supper).with(bread("18:00")).with(custard("18:10")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_short_use_inside_a_long_one_does_not_end_it() {
    var buns = aSupperOf(aDish("bread").step(aStep("bake").takes(30).bake(220)),
        aDish("buns").step(aStep("bake").takes(10).bake(220)),
        aDish("custard").step(aStep("bake").takes(30).bake(120)));
    var log = afterBread().cooling(120, "17:30", "17:44").at(120, "17:44", "18:14");

    assertThat(aPlanFor(buns).with(bread("17:00"))
        .with(aRun("buns", "bake", "17:10", 10).oven("oven", 220))
        .with(custard("17:44"))
        .with(log)
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void bread_comes_out_as_the_lamb_is_turned_down() {
    var log = aLog("oven").warming(220, "17:30", "17:50")
        .at(220, "17:50", "18:20")
        .cooling(160, "18:20", "18:28")
        .at(160, "18:28", "19:00");

    assertThat(lamb("18:20", "19:00").with(bread("17:50")).with(log).heldAgainst(rule)).isEmpty();
  }

  @Test
  void bread_still_and_then_with_the_fan_is_warmed_for_still() {
    var fan = moreBread("17:30").mode(Oven.FAN);

    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(fan)
        .with(afterBread().mode(Oven.FAN).at(220, "17:30", "18:00"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_is_wrong_in_one_way_is_one_break_however_it_is_written() {
    var log = aLog("oven").at(210, "18:00", "18:10").at(210, "18:10", "18:30");

    assertThat(aPlanFor(supper).with(bread("18:00")).with(log).heldAgainst(rule)).extracting(Break::when)
        .containsExactly(between("17:40", "18:00"), between("18:00", "18:30"));
  }

  @Test
  void what_is_wrong_twice_is_two_breaks() {
    var log = aLog("oven").warming(220, "16:40", "16:50").at(220, "17:00", "17:20").at(220, "17:30", "18:00");

    assertThat(aPlanFor(supper).with(bread("17:00")).with(moreBread("17:30")).with(log).heldAgainst(rule))
        .extracting(Break::when)
        .containsExactly(between("16:50", "17:00"), between("17:20", "17:30"));
  }
}
