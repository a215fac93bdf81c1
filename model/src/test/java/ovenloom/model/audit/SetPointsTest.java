package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Ovens.anOven;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aBake;
import static ovenloom.model.audit.Steps.aStage;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Need;

/** The dial goes from 50 C to 250 C by 5. */
class SetPointsTest {

  private final KitchenRule rule = new SetPoints();
  private final Events tart = aSupperOf(aDish("tart").step(aStep("bake").takes(30).bake(170, 180, 190)));
  private final Events roast = aSupperOf(
      aDish("roast").step(aStep("roast").takes(60).bake(aStage(230, 20), aStage(160, null))));

  private static Events baked(Need.Stage stage) {
    return aSupperOf(aDish("tart").step(aStep("bake").takes(30).needs(aBake(stage))));
  }

  private static Need.Stage written(String mode, Setting setting) {
    return new Need.Stage(setting, setting, setting, mode, null);
  }

  private List<Break> bakedAt(Events event, String mode, Setting mark) {
    return aPlanFor(event).with(aRun("tart", "bake", "18:00", 30).oven("oven", mark).mode(mode))
        .heldAgainst(rule);
  }

  @Test
  void a_tart_from_170_to_190_may_be_baked_at_either_end() {
    assertThat(bakedAt(tart, Oven.STILL, Setting.celsius(170))).isEmpty();
    assertThat(bakedAt(tart, Oven.STILL, Setting.celsius(190))).isEmpty();
  }

  @Test
  void at_195_it_is_baked_5_kelvins_too_hot_and_at_160_10_too_cool() {
    assertThat(bakedAt(tart, Oven.STILL, Setting.celsius(195))).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(5);
      assertThat(each.unit()).isEqualTo(Break.Unit.KELVINS);
    });
    assertThat(bakedAt(tart, Oven.STILL, Setting.celsius(160))).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(10));
  }

  @Test
  void a_mark_half_a_step_from_what_is_written_will_do_and_one_further_away_will_not() {
    var half = baked(written(Oven.STILL, Setting.celsius(177.5)));
    var beyond = baked(written(Oven.STILL, Setting.celsius(177)));

    assertThat(bakedAt(half, Oven.STILL, Setting.celsius(175))).isEmpty();
    assertThat(bakedAt(half, Oven.STILL, Setting.celsius(180))).isEmpty();
    assertThat(bakedAt(beyond, Oven.STILL, Setting.celsius(180))).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(3));
  }

  @Test
  void nobody_sets_a_dial_between_its_marks() {
    assertThat(bakedAt(tart, Oven.STILL, Setting.celsius(182))).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(2));
  }

  @Test
  void what_is_written_for_200_still_is_baked_at_180_with_the_fan() {
    var event = baked(written(Oven.STILL, Setting.celsius(200)));

    assertThat(bakedAt(event, Oven.FAN, Setting.celsius(180))).isEmpty();
    assertThat(bakedAt(event, Oven.FAN, Setting.celsius(200))).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(20));
  }

  @Test
  void what_is_written_for_the_fan_at_160_is_baked_at_180_still() {
    var event = baked(written(Oven.FAN, Setting.celsius(160)));

    assertThat(bakedAt(event, Oven.STILL, Setting.celsius(180))).isEmpty();
    assertThat(bakedAt(event, Oven.FAN, Setting.celsius(160))).isEmpty();
    assertThat(bakedAt(event, Oven.STILL, Setting.celsius(160))).hasSize(1);
  }

  @Test
  void on_a_dial_in_fahrenheit_the_fan_is_worth_25_degrees() {
    var dial = anOven("oven").dial(Setting.fahrenheit(200), Setting.fahrenheit(500), 25);
    var event = baked(written(Oven.STILL, Setting.fahrenheit(400))).in(aHomeKitchen().ovens(dial));

    assertThat(bakedAt(event, Oven.FAN, Setting.fahrenheit(375))).isEmpty();
    assertThat(bakedAt(event, Oven.FAN, Setting.fahrenheit(400))).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(14));
  }

  @Test
  void steam_is_no_dry_heat() {
    var event = baked(written("steam", Setting.celsius(100)))
        .in(aHomeKitchen().ovens(anOven("oven").modes(Oven.STILL, "steam")));

    assertThat(bakedAt(event, "steam", Setting.celsius(100))).isEmpty();
    assertThat(bakedAt(event, Oven.STILL, Setting.celsius(100))).hasSize(1);
  }

  @Test
  void an_oven_without_a_fan_bakes_without_one() {
    var event = baked(written(Oven.STILL, Setting.celsius(200)))
        .in(aHomeKitchen().ovens(anOven("oven").modes("still")));

    assertThat(bakedAt(event, Oven.FAN, Setting.celsius(180))).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("the oven has no mode fan"));
  }

  @Test
  void a_hot_stage_of_20_minutes_may_slip_by_3_and_not_by_4() {
    for (String turned : List.of("18:17", "18:20", "18:23")) {
      assertThat(roasted("18:00", turned, "19:00")).isEmpty();
    }
    for (String turned : List.of("18:16", "18:24")) {
      assertThat(roasted("18:00", turned, "19:00")).singleElement().satisfies(each -> {
        assertThat(each.off()).isEqualTo(1);
        assertThat(each.unit()).isEqualTo(Break.Unit.MINUTES);
      });
    }
  }

  private List<Break> roasted(String from, String turned, String to) {
    return aPlanFor(roast).with(aRun("roast", "roast", "18:00", 60)
        .oven("oven", 230)
        .stages(Runs.aStage(230, from, turned), Runs.aStage(160, turned, to))).heldAgainst(rule);
  }

  @Test
  void stages_follow_one_another_from_the_load_to_the_unload() {
    var early = roasted("17:58", "18:20", "19:00");
    var ended = roasted("18:00", "18:20", "18:55");
    var apart = aPlanFor(roast).with(aRun("roast", "roast", "18:00", 60)
        .oven("oven", 230)
        .stages(Runs.aStage(230, "18:00", "18:20"), Runs.aStage(160, "18:22", "19:00"))).heldAgainst(rule);

    assertThat(early).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(2));
    assertThat(ended).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(5));
    assertThat(apart).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(2));
  }

  @Test
  void no_stage_is_left_out_or_left_without_a_minute() {
    var one = aPlanFor(roast).with(aRun("roast", "roast", "18:00", 60).oven("oven", 230)).heldAgainst(rule);
    var brief = aPlanFor(roast).with(aRun("roast", "roast", "18:00", 20)
        .oven("oven", 230)
        .stages(Runs.aStage(230, "18:00", "18:20"), Runs.aStage(160, "18:20", "18:20"))).heldAgainst(rule);
    var aMinute = aPlanFor(roast).with(aRun("roast", "roast", "18:00", 21)
        .oven("oven", 230)
        .stages(Runs.aStage(230, "18:00", "18:20"), Runs.aStage(160, "18:20", "18:21"))).heldAgainst(rule);

    assertThat(one).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.what()).isEqualTo("has 1 stages and is written with 2");
    });
    assertThat(brief).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(aMinute).isEmpty();
  }

  @Test
  void each_stage_has_its_own_window() {
    var turnedTooLow = aPlanFor(roast).with(aRun("roast", "roast", "18:00", 60)
        .oven("oven", 230)
        .stages(Runs.aStage(230, "18:00", "18:20"), Runs.aStage(150, "18:20", "19:00"))).heldAgainst(rule);

    assertThat(turnedTooLow).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(10));
  }

  @Test
  void a_bake_is_in_an_oven_of_this_kitchen_and_nothing_else_is() {
    var salad = aSupperOf(aDish("salad").step(aStep("toss")));

    assertThat(aPlanFor(tart).with(aRun("tart", "bake", "18:00", 30)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("is a bake and is put in no oven"));
    assertThat(aPlanFor(tart).with(aRun("tart", "bake", "18:00", 30).oven("kiln", 180)).heldAgainst(rule))
        .hasSize(1);
    assertThat(aPlanFor(salad).with(aRun("salad", "toss", "18:00", 10).oven("oven", 180)).heldAgainst(rule))
        .hasSize(1);
    assertThat(aPlanFor(salad).with(aRun("salad", "toss", "18:00", 10)).heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_is_not_on_the_menu_is_for_another_rule() {
    assertThat(aPlanFor(tart).with(aRun("pie", "bake", "18:00", 30).oven("oven", 999)).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void a_steamer_does_not_stand_in_for_a_fan_nor_a_fan_for_a_steamer() {
    var kitchen = aHomeKitchen().ovens(anOven("oven").modes(Oven.STILL, Oven.FAN, "steam"));

    assertThat(
        bakedAt(baked(written("steam", Setting.celsius(100))).in(kitchen), Oven.FAN, Setting.celsius(80)))
        .hasSize(1);
    assertThat(
        bakedAt(baked(written(Oven.FAN, Setting.celsius(100))).in(kitchen), "steam", Setting.celsius(120)))
        .hasSize(1);
  }

  @Test
  void two_hundred_and_twelve_fahrenheit_is_no_mark_of_a_dial_in_celsius() {
    var boiling = baked(written(Oven.STILL, Setting.celsius(100)));

    assertThat(bakedAt(boiling, Oven.STILL, Setting.celsius(100))).isEmpty();
    assertThat(bakedAt(boiling, Oven.STILL, Setting.fahrenheit(212))).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void the_stages_do_not_end_a_minute_before_the_bake_does() {
    assertThat(roasted("18:00", "18:20", "18:59")).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }
}
