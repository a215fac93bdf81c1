package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aCook;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStage;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Oven;

/**
 * The oven starts at 20 C and warms by 10 K a minute: 220 C takes 20 minutes. It is half as far above the room after 14
 * minutes: 220 C to 120 C. It takes 3 kW to warm and 1 kW to hold.
 */
class WarmingAndCoolingTest {

  private final KitchenRule rule = new WarmingAndCooling();
  private final Events supper = aSupperOf(
      aDish("bread").batches(2).step(aStep("bake").takes(30).bake(220)),
      aDish("custard").step(aStep("bake").takes(30).bake(120)),
      aDish("lamb").step(aStep("roast").takes(60).bake(aStage(220, 20), aStage(160, null))));

  private static Runs bread(String from) {
    return aRun("bread", "bake", from, 30).batch(1).oven("oven", 220);
  }

  private static Runs moreBread(String from) {
    return aRun("bread", "bake", from, 30).batch(2).oven("oven", 220);
  }

  private static Runs custard(String from) {
    return aRun("custard", "bake", from, 30).oven("oven", 120);
  }

  private Plans lamb(String turned, String to) {
    return aPlanFor(supper).with(aRun("lamb", "roast", Clock.at("18:00"), Clock.at(to) - Clock.at("18:00"))
        .oven("oven", 220)
        .stages(Runs.aStage(220, "18:00", turned), Runs.aStage(160, turned, to)));
  }

  /** Bread from 17:00 to 17:30, warmed for. */
  private static Logs afterBread() {
    return aLog("oven").warming(220, "16:40", "17:00").at(220, "17:00", "17:30");
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
  void from_220_the_oven_has_cooled_to_120_after_14_minutes_and_not_after_13() {
    var log = afterBread().cooling(120, "17:30", "17:44").at(120, "17:44", "18:14");
    var rushed = afterBread().cooling(120, "17:30", "17:43").at(120, "17:43", "18:13");

    assertThat(aPlanFor(supper).with(bread("17:00")).with(custard("17:44")).with(log).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00")).with(custard("17:43")).with(rushed).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.when()).isEqualTo(between("17:30", "17:43"));
        });
  }

  @Test
  void from_120_it_has_warmed_to_220_after_10_minutes() {
    var log = aLog("oven").warming(120, "16:50", "17:00")
        .at(120, "17:00", "17:30")
        .warming(220, "17:30", "17:40")
        .at(220, "17:40", "18:15");

    assertThat(aPlanFor(supper).with(custard("17:00")).with(bread("17:45")).with(log).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void bread_that_follows_custard_at_once_goes_into_an_oven_10_minutes_from_hot() {
    var log = aLog("oven").warming(120, "16:50", "17:00").at(120, "17:00", "17:30").at(220, "17:30", "18:00");

    assertThat(aPlanFor(supper).with(custard("17:00")).with(bread("17:30")).with(log).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(10));
  }

  @Test
  void a_gap_of_29_minutes_is_held_though_switching_off_would_be_cheaper() {
    var held = afterBread().cooling(120, "17:30", "17:44").at(120, "17:44", "18:29");
    var off = afterBread().warming(120, "17:55", "17:59").at(120, "17:59", "18:29");

    assertThat(aPlanFor(supper).with(bread("17:00")).with(custard("17:59")).with(held).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00")).with(custard("17:59")).with(off).heldAgainst(rule))
        .isNotEmpty();
  }

  /** Off for 25 of 30 minutes it is at 78 C, and 5 minutes from 120 C: 15 kW min, where holding takes 16. */
  @Test
  void a_gap_of_30_minutes_is_not_held_where_switching_off_is_cheaper() {
    var off = afterBread().warming(120, "17:55", "18:00").at(120, "18:00", "18:30");
    var held = afterBread().cooling(120, "17:30", "17:44").at(120, "17:44", "18:30");

    assertThat(aPlanFor(supper).with(bread("17:00")).with(custard("18:00")).with(off).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00")).with(custard("18:00")).with(held).heldAgainst(rule))
        .isNotEmpty();
  }

  /** After 31 and after 32 minutes switched off 16 more warm it again: 48 kW min, where holding takes 47 and 48. */
  @Test
  void between_two_breads_47_minutes_are_held_and_of_48_where_it_is_all_one_the_oven_is_off() {
    var held = afterBread().at(220, "17:30", "18:47");
    var off = afterBread().warming(220, "18:02", "18:18").at(220, "18:18", "18:48");

    assertThat(aPlanFor(supper).with(bread("17:00")).with(moreBread("18:17")).with(held).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00")).with(moreBread("18:18")).with(off).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(moreBread("18:18"))
        .with(afterBread().at(220, "17:30", "18:48"))
        .heldAgainst(rule)).isNotEmpty();
  }

  @Test
  void it_is_held_when_nobody_is_there_to_switch_it_on_again() {
    var off = afterBread().warming(220, "18:02", "18:18").at(220, "18:18", "18:48");
    var held = afterBread().at(220, "17:30", "18:48");
    var gone = supper.cooks(aCook("Host", between("16:00", "18:01"), between("18:03", "19:00")));

    assertThat(aPlanFor(gone).with(bread("17:00")).with(moreBread("18:18")).with(held).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(gone).with(bread("17:00")).with(moreBread("18:18")).with(off).heldAgainst(rule))
        .isNotEmpty();
  }

  @Test
  void who_goes_at_two_minutes_past_can_still_switch_it_on_and_so_can_who_comes() {
    var off = afterBread().warming(220, "18:02", "18:18").at(220, "18:18", "18:48");
    var goes = supper.cooks(aCook("Host", between("16:00", "18:02")));

    assertThat(aPlanFor(goes).with(bread("17:00")).with(moreBread("18:18")).with(off).heldAgainst(rule))
        .isEmpty();

    var comes = supper.cooks(aCook("Host", between("18:02", "19:00")));

    assertThat(aPlanFor(comes).with(bread("17:00")).with(moreBread("18:18")).with(off).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void uses_at_one_mark_that_touch_are_one() {
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(moreBread("17:30"))
        .with(afterBread().at(220, "17:30", "18:00"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void an_oven_used_last_night_is_cold_this_morning() {
    var lastNight = aRun("bread", "bake", daysBefore(1, "20:00"), 30).batch(1).oven("oven", 220);
    var log = aLog("oven").daysBefore(1)
        .warming(220, "19:40", "20:00")
        .at(220, "20:00", "20:30")
        .daysBefore(0)
        .warming(220, "9:40", "10:00")
        .at(220, "10:00", "10:30");

    assertThat(aPlanFor(supper).with(lastNight).with(moreBread("10:00")).with(log).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void four_o_clock_is_morning_for_a_baker_and_one_minute_past_it_is_not() {
    var before = aLog("oven").warming(220, "3:10", "3:30").at(220, "3:30", "4:00");

    assertThat(aPlanFor(supper).with(bread("3:30"))
        .with(moreBread("4:25"))
        .with(before.warming(220, "4:05", "4:25").at(220, "4:25", "4:55"))
        .heldAgainst(rule)).isEmpty();

    var after = aLog("oven").warming(220, "3:11", "3:31").at(220, "3:31", "4:26");

    assertThat(aPlanFor(supper).with(bread("3:31"))
        .with(moreBread("4:26"))
        .with(after.at(220, "4:26", "4:56"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_morning_too_short_to_warm_a_cold_oven_is_too_short() {
    var log = aLog("oven").warming(220, "3:05", "3:25")
        .at(220, "3:25", "3:55")
        .warming(220, "3:55", "4:10")
        .at(220, "4:10", "4:40");

    assertThat(aPlanFor(supper).with(bread("3:25")).with(moreBread("4:10")).with(log).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(5));
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
  void an_oven_in_which_food_waits_is_off_for_as_long_and_warmed_after_it() {
    var waiting = aStay("bread", "bake", "17:30").ovenThatIsOff("17:50", "oven");
    var log = afterBread().warming(220, "17:50", "18:00").at(220, "18:00", "18:30");

    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(waiting)
        .with(moreBread("18:00"))
        .with(afterBread().warming(220, "17:48", "18:00").at(220, "18:00", "18:30"))
        .heldAgainst(rule)).extracting(Break::off).containsExactly(2L, 2L);
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(waiting)
        .with(moreBread("18:00"))
        .with(log)
        .heldAgainst(rule)).extracting(Break::off).containsExactly(2L);
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(aStay("bread", "bake", "17:30").ovenThatIsOff("17:48", "oven"))
        .with(moreBread("18:00"))
        .with(afterBread().warming(220, "17:48", "18:00").at(220, "18:00", "18:30"))
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
  void a_mark_cooler_than_the_room_breaks_the_rule_and_not_the_audit() {
    var frosty = aRun("custard", "bake", "18:00", 30).oven("oven", 15);

    assertThat(aPlanFor(supper).with(frosty).with(aLog("oven").at(15, "18:00", "18:30")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(frosty)
        .with(afterBread().cooling(15, "17:30", "18:00").at(15, "18:00", "18:30"))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("never cools to 15 C"));
  }

  /** 10 minutes of warming and 20 of holding take 50 kW min; off, 16 minutes of warming take 48. */
  @Test
  void between_custard_and_bread_half_an_hour_later_the_oven_is_off() {
    var log = aLog("oven").warming(120, "16:50", "17:00")
        .at(120, "17:00", "17:30")
        .warming(220, "17:44", "18:00")
        .at(220, "18:00", "18:30");

    assertThat(aPlanFor(supper).with(custard("17:00")).with(bread("18:00")).with(log).heldAgainst(rule))
        .isEmpty();
  }

  /** 3 minutes of cooling cost nothing, 27 of holding 27 kW min; off, 11 minutes of warming take 33. */
  @Test
  void between_bread_and_cake_half_an_hour_later_it_is_held() {
    var cake = aSupperOf(aDish("bread").step(aStep("bake").takes(30).bake(220)),
        aDish("cake").step(aStep("bake").takes(30).bake(200)));
    var log = afterBread().cooling(200, "17:30", "17:33").at(200, "17:33", "18:30");

    assertThat(aPlanFor(cake).with(bread("17:00"))
        .with(aRun("cake", "bake", "18:00", 30).oven("oven", 200))
        .with(log)
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void one_of_two_cooks_is_enough_to_switch_it_on() {
    var off = afterBread().warming(220, "18:02", "18:18").at(220, "18:18", "18:48");
    var two = supper.cooks(aCook("Host", between("16:00", "18:30")),
        aCook("Guest", between("18:30", "19:00")));

    assertThat(aPlanFor(two).with(bread("17:00")).with(moreBread("18:18")).with(off).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void every_day_has_a_morning() {
    var log = aLog("oven").daysBefore(1)
        .warming(220, "3:10", "3:30")
        .at(220, "3:30", "4:00")
        .warming(220, "4:05", "4:25")
        .at(220, "4:25", "4:55");

    assertThat(aPlanFor(supper)
        .with(aRun("bread", "bake", daysBefore(1, "3:30"), 30).batch(1).oven("oven", 220))
        .with(aRun("bread", "bake", daysBefore(1, "4:25"), 30).batch(2).oven("oven", 220))
        .with(log)
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_short_use_inside_a_long_one_does_not_end_it() {
    var buns = aSupperOf(aDish("bread").step(aStep("bake").takes(30).bake(220)),
        aDish("buns").step(aStep("bake").takes(10).bake(220)));

    assertThat(aPlanFor(buns).with(bread("17:00"))
        .with(aRun("buns", "bake", "17:10", 10).oven("oven", 220))
        .with(afterBread())
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
  void two_custards_that_touch_are_one_use_after_the_bread() {
    var flan = aSupperOf(aDish("bread").step(aStep("bake").takes(30).bake(220)),
        aDish("custard").step(aStep("bake").takes(30).bake(120)),
        aDish("flan").step(aStep("bake").takes(30).bake(120)));
    var log = afterBread().cooling(120, "17:30", "17:44").at(120, "17:44", "18:34");

    assertThat(aPlanFor(flan).with(bread("17:00"))
        .with(custard("17:44"))
        .with(aRun("flan", "bake", "18:04", 30).oven("oven", 120))
        .with(log)
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

  @Test
  void no_oven_cools_to_the_room() {
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(aRun("custard", "bake", "18:00", 30).oven("oven", 20))
        .with(afterBread().cooling(20, "17:30", "18:00").at(20, "18:00", "18:30"))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("never cools to 20 C"));
  }
}
