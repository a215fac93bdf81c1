package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStage;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Oven;

class OneDialTest {

  private final KitchenRule rule = new OneDial();
  private final Events supper = aSupperOf(
      aDish("bread").step(aStep("bake").takes(30).bake(220, 230, 240)),
      aDish("custard").step(aStep("bake").takes(40).bake(150).keeps(null, 60, null)),
      aDish("carrots").batches(2).step(aStep("roast").takes(30).bake(200, 210, 220)),
      aDish("lamb").step(aStep("roast").takes(60).bake(aStage(220, 20), aStage(160, null))),
      aDish("pork").step(aStep("roast").takes(60).bake(aStage(220, 20), aStage(160, null))));

  private static Runs bread(String from) {
    return aRun("bread", "bake", from, 30).oven("oven", 230);
  }

  private static Runs custard(String from) {
    return aRun("custard", "bake", from, 40).oven("oven", 150);
  }

  private static Runs lamb() {
    return aRun("lamb", "roast", "18:00", 60)
        .oven("oven", 220)
        .stages(Runs.aStage(220, "18:00", "18:20"), Runs.aStage(160, "18:20", "19:00"));
  }

  @Test
  void bread_at_230_and_custard_at_150_cannot_share_the_oven_for_twenty_minutes() {
    var breaks = aPlanFor(supper).with(bread("18:00")).with(custard("18:10")).heldAgainst(rule);

    assertThat(breaks).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(20);
      assertThat(each.who()).containsExactly("oven", "bread/bake", "custard/bake");
      assertThat(each.when()).isEqualTo(Clock.between("18:10", "18:30"));
    });
  }

  @Test
  void custard_may_go_in_the_minute_the_bread_comes_out() {
    assertThat(aPlanFor(supper).with(bread("18:00")).with(custard("18:30")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_minute_sooner_is_a_minute_too_soon() {
    assertThat(aPlanFor(supper).with(bread("18:00")).with(custard("18:29")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  /** Bread from 220 to 240 and carrots from 200 to 220 have the one mark 220 in common. Common practice. */
  @Test
  void two_trays_whose_windows_meet_at_one_mark_share_the_oven_at_that_mark_only() {
    var carrots = aRun("carrots", "roast", "18:00", 30).batch(1);

    assertThat(aPlanFor(supper).with(aRun("bread", "bake", "18:00", 30).oven("oven", 220))
        .with(carrots.oven("oven", 220))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(aRun("bread", "bake", "18:00", 30).oven("oven", 220))
        .with(aRun("carrots", "roast", "18:00", 30).batch(1).oven("oven", 215))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void one_mark_in_two_modes_is_not_one_dial() {
    var still = aRun("carrots", "roast", "18:00", 30).batch(1).oven("oven", 200);
    var fan = aRun("carrots", "roast", "18:15", 30).batch(2).oven("oven", 200).mode(Oven.FAN);

    assertThat(aPlanFor(supper).with(still).with(fan).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(15));
  }

  @Test
  void two_ovens_have_two_dials() {
    assertThat(aPlanFor(supper).with(bread("18:00"))
        .with(aRun("custard", "bake", "18:00", 40).oven("other oven", 150))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void the_dial_is_turned_over_two_roasts_when_both_change_at_that_very_minute() {
    var together = aRun("pork", "roast", "17:57", 60)
        .oven("oven", 220)
        .stages(Runs.aStage(220, "17:57", "18:20"), Runs.aStage(160, "18:20", "18:57"));
    var aMinuteLater = aRun("pork", "roast", "17:58", 60)
        .oven("oven", 220)
        .stages(Runs.aStage(220, "17:58", "18:21"), Runs.aStage(160, "18:21", "18:58"));

    assertThat(aPlanFor(supper).with(lamb()).with(together).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(lamb()).with(aMinuteLater).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void carrots_at_220_come_out_before_the_lamb_is_turned_down() {
    var carrots = aRun("carrots", "roast", "17:50", 30).batch(1).oven("oven", 220);
    var late = aRun("carrots", "roast", "17:51", 30).batch(1).oven("oven", 220);

    assertThat(aPlanFor(supper).with(lamb()).with(carrots).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(lamb()).with(late).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void custard_that_waits_at_80_keeps_the_bread_out() {
    var waiting = aStay("custard", "bake", "17:40").oven("18:10", "oven", 80);

    assertThat(aPlanFor(supper).with(custard("17:00")).with(waiting).with(bread("18:09")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(aPlanFor(supper).with(custard("17:00")).with(waiting).with(bread("18:10")).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void an_oven_that_is_off_is_at_a_mark_of_its_own() {
    var cooling = aStay("custard", "bake", "17:40").ovenThatIsOff("18:10", "oven");

    assertThat(aPlanFor(supper).with(custard("17:00")).with(cooling).with(bread("18:00")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("off and 230 C still for 10 min"));
  }

  @Test
  void two_trays_may_cool_side_by_side_in_an_oven_that_is_off() {
    var breaks = aPlanFor(supper)
        .with(aRun("carrots", "roast", "17:00", 30).batches(1, 2).oven("oven", 200))
        .with(aStay("carrots", "roast", "17:30").batch(1).ovenThatIsOff("18:10", "oven"))
        .with(aStay("carrots", "roast", "17:30").batch(2).ovenThatIsOff("18:20", "oven"))
        .heldAgainst(rule);

    assertThat(breaks).isEmpty();
  }

  @Test
  void the_dial_is_not_turned_again_over_food_that_waits() {
    var restless = aStay("custard", "bake", "17:40").oven("18:10", "oven", 80).ovenThatIsOff("18:40", "oven");
    var calm = aStay("custard", "bake", "17:40").oven("18:10", "oven", 80).oven("18:40", "oven", 80);

    assertThat(aPlanFor(supper).with(custard("17:00")).with(restless).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(supper).with(custard("17:00")).with(calm).heldAgainst(rule)).isEmpty();
  }
}
