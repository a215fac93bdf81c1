package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Kitchens.aHomeKitchen;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Kitchens;
import ovenloom.model.audit.Ovens;
import ovenloom.model.audit.Runs;
import ovenloom.model.audit.Steps;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.life.Cards;
import ovenloom.model.measure.Setting;
import ovenloom.model.menu.Need;
import ovenloom.model.menu.Work;
import ovenloom.model.plan.Baking;
import ovenloom.model.plan.Plan;

class AsWrittenTest {

  @Test
  void at_the_written_mark_it_costs_nothing_and_a_point_for_each_five_degrees() {
    assertThat(setting(aStep("bake").bake(160, 180, 200), at(180))).isZero();
    assertThat(setting(aStep("bake").bake(160, 180, 200), at(185))).isEqualTo(1);
    assertThat(setting(aStep("bake").bake(160, 180, 200), at(160))).isEqualTo(4);
  }

  @Test
  void the_written_setting_is_the_nearest_mark_the_dial_has() {
    assertThat(setting(inFahrenheit(350), at(175))).as("350 F is 176.7 C").isZero();
    assertThat(setting(inFahrenheit(350), at(180))).isEqualTo(1);
  }

  @Test
  void in_a_fan_oven_what_is_written_for_a_still_one_is_twenty_degrees_lower() {
    assertThat(setting(aStep("bake").bake(180), at(160).mode(Oven.FAN))).isZero();
    assertThat(setting(aStep("bake").bake(180), at(180).mode(Oven.FAN))).isEqualTo(4);
  }

  @Test
  void in_a_still_oven_what_is_written_for_a_fan_is_twenty_degrees_higher() {
    var fan = new Need.Stage(Setting.celsius(160), Setting.celsius(160), Setting.celsius(160), Oven.FAN,
        null);

    assertThat(setting(aStep("bake").bake(fan), at(180))).isZero();
    assertThat(setting(aStep("bake").bake(fan), at(160).mode(Oven.FAN))).isZero();
    assertThat(setting(aStep("bake").bake(fan), at(160))).isEqualTo(4);
  }

  @Test
  void on_a_fahrenheit_dial_the_fan_makes_25_degrees_and_a_mark_is_two_points() {
    var american = aHomeKitchen().ovens(Ovens.anOven("oven")
        .dial(Setting.fahrenheit(200), Setting.fahrenheit(500), 25));

    assertThat(setting(american, inFahrenheit(350), fahrenheit(350))).isZero();
    assertThat(setting(american, inFahrenheit(350), fahrenheit(375))).as("13.9 K").isEqualTo(2);
    assertThat(setting(american, inFahrenheit(350), fahrenheit(325).mode(Oven.FAN))).isZero();
    assertThat(setting(american, inFahrenheit(350), fahrenheit(350).mode(Oven.FAN))).isEqualTo(2);
  }

  @Test
  void nine_degrees_on_a_fine_fahrenheit_dial_are_a_whole_point() {
    var fine = aHomeKitchen().ovens(Ovens.anOven("oven")
        .dial(Setting.fahrenheit(200), Setting.fahrenheit(500), 1));

    for (int written = 300; written < 330; written++) {
      assertThat(setting(fine, inFahrenheit(written), fahrenheit(written + 9))).isEqualTo(1);
      assertThat(setting(fine, inFahrenheit(written), fahrenheit(written + 8))).isZero();
    }
  }

  @Test
  void four_and_five_degrees_in_two_stages_are_nine_and_the_fan_is_25_lower() {
    var fine = aHomeKitchen().ovens(Ovens.anOven("oven")
        .dial(Setting.fahrenheit(200), Setting.fahrenheit(500), 1));
    for (int first = 400; first < 420; first++) {
      var roast = aStep("bake").bake(aStageInFahrenheit(first, 10), aStageInFahrenheit(300, null));

      assertThat(setting(fine, roast, fahrenheit(first).stages(
          new Baking.StageRun(Setting.fahrenheit(first + 4), between("18:00", "18:10")),
          new Baking.StageRun(Setting.fahrenheit(305), between("18:10", "18:30"))))).isEqualTo(1);
    }
    assertThat(setting(fine, inFahrenheit(350), fahrenheit(325).mode(Oven.FAN))).isZero();
    assertThat(setting(fine, inFahrenheit(350), fahrenheit(316).mode(Oven.FAN))).isEqualTo(1);
  }

  @Test
  void stages_are_added_before_they_are_rounded() {
    var roast = aStep("bake").bake(
        new Need.Stage(Setting.celsius(222), Setting.celsius(200), Setting.celsius(250), Oven.STILL, 10),
        new Need.Stage(Setting.celsius(160), Setting.celsius(150), Setting.celsius(170), Oven.STILL, null));
    var fine = aHomeKitchen().ovens(Ovens.anOven("oven")
        .dial(Setting.celsius(50), Setting.celsius(250), 1));

    assertThat(setting(fine, roast, stages(224, 163))).as("2 and 3").isEqualTo(1);
    assertThat(setting(fine, roast, stages(224, 162))).isZero();
  }

  @Test
  void a_run_of_nothing_known_or_in_an_oven_nobody_has_costs_nothing() {
    assertThat(setting(aStep("fry"), at(200))).isZero();
    assertThat(setting(aStep("bake").bake(180), aRun("pie", "bake", "18:00", 30).oven("kiln", 250))).isZero();
  }

  private static Runs stages(int first, int second) {
    return at(first).stages(
        new Baking.StageRun(Setting.celsius(first), between("18:00", "18:10")),
        new Baking.StageRun(Setting.celsius(second), between("18:10", "18:30")));
  }

  private static Steps inFahrenheit(int degrees) {
    return aStep("bake").bake(aStageInFahrenheit(degrees, null));
  }

  private static Need.Stage aStageInFahrenheit(int degrees, @Nullable Integer minutes) {
    Setting written = Setting.fahrenheit(degrees);
    return new Need.Stage(written, written, written, Oven.STILL, minutes);
  }

  private static Runs at(int celsius) {
    return aRun("pie", "bake", "18:00", 30).oven("oven", celsius);
  }

  private static Runs fahrenheit(int degrees) {
    return aRun("pie", "bake", "18:00", 30).oven("oven", Setting.fahrenheit(degrees));
  }

  private static long setting(Steps step, Runs run) {
    return setting(aHomeKitchen(), step, run);
  }

  private static long setting(Kitchens kitchen, Steps step, Runs run) {
    Plan plan = aPlanFor(aSupperOf(aDish("pie").step(step)).in(kitchen)).with(run).plan();
    return AsWritten.points(Ledger.of(new Cards(Work.of(plan.event())), plan));
  }
}
