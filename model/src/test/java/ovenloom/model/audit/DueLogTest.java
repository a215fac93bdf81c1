package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.BreadAndCustard.afterBread;
import static ovenloom.model.audit.BreadAndCustard.bread;
import static ovenloom.model.audit.BreadAndCustard.custard;
import static ovenloom.model.audit.BreadAndCustard.moreBread;
import static ovenloom.model.audit.BreadAndCustard.supper;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aCook;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;

/** What the oven does between two uses; figures as in {@link BreadAndCustard}. */
class DueLogTest {

  private final KitchenRule rule = new WarmingAndCooling();
  private final Events supper = supper();

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
  void a_mark_cooler_than_the_room_breaks_the_rule_and_not_the_audit() {
    var frosty = aRun("custard", "bake", "18:00", 30).oven("oven", 15);

    assertThat(aPlanFor(supper).with(frosty).with(aLog("oven").at(15, "18:00", "18:30")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(frosty)
        .with(afterBread().cooling(15, "17:30", "18:00").at(15, "18:00", "18:30"))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("never gets to 15 C"));
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
  void no_oven_cools_to_the_room() {
    assertThat(aPlanFor(supper).with(bread("17:00"))
        .with(aRun("custard", "bake", "18:00", 30).oven("oven", 20))
        .with(afterBread().cooling(20, "17:30", "18:00").at(20, "18:00", "18:30"))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("never gets to 20 C"));
  }
}
