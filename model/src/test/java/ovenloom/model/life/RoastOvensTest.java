package ovenloom.model.life;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Dishes;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Oven;
import ovenloom.model.measure.Setting;
import ovenloom.model.measure.Temperature;
import ovenloom.model.menu.Work;
import ovenloom.model.safety.Profile;

/** FDA Food Code 2017, 3-401.11(B)(1): in a still oven 350 F for a roast under 10 lb, 250 F from there on. */
class RoastOvensTest {

  private static final Temperature LIGHT = Temperature.fahrenheit(350);
  private static final Temperature HEAVY = Temperature.fahrenheit(250);

  private static Dishes lamb() {
    return aDish("lamb").tags("whole roast");
  }

  private static Dishes roasted(Dishes dish, int vessels) {
    return dish.step(aStep("roast").takes(90).bake(180).in("dish", vessels));
  }

  /** At the last step of the last dish, in a still oven. */
  private static @Nullable Temperature least(Dishes... dishes) {
    Work work = Work.of(aSupperOf(dishes).event());
    Profile.RoastOven least = new RoastOvens(Profile.strictest(), new Cards(work))
        .least(work.steps().getLast(), Oven.STILL);
    return least == null ? null : least.at();
  }

  @Test
  void ten_pounds_are_no_longer_under_ten_pounds() {
    assertThat(least(roasted(lamb().ingredient("leg", "9.99 lb"), 1))).isEqualTo(LIGHT);
    assertThat(least(roasted(lamb().ingredient("leg", "10 lb"), 1))).isEqualTo(HEAVY);
  }

  @Test
  void what_nobody_weighs_is_light() {
    assertThat(least(roasted(lamb(), 1))).isEqualTo(LIGHT);
    assertThat(least(roasted(lamb().ingredient("legs", "2").ingredient("stock", "5 l"), 1)))
        .isEqualTo(LIGHT);
  }

  @Test
  void carrots_do_not_make_a_roast_heavier() {
    assertThat(least(roasted(lamb().ingredient("leg", "8 lb").ingredient("carrots", "4 lb"), 1)))
        .isEqualTo(LIGHT);
  }

  @Test
  void each_vessel_has_a_roast_of_its_own() {
    assertThat(least(roasted(lamb().ingredient("legs", "16 lb"), 2))).isEqualTo(LIGHT);
    assertThat(least(roasted(lamb().ingredient("legs", "20 lb"), 2))).isEqualTo(HEAVY);
  }

  @Test
  void each_batch_has_a_roast_of_its_own() {
    Dishes together = lamb().batches(2)
        .ingredient("leg", "8 lb")
        .step(aStep("roast").takes(90).once().bake(180).in("dish"));

    assertThat(least(together)).isEqualTo(LIGHT);
  }

  @Test
  void browned_on_a_burner_before_it_is_still_to_be_roasted() {
    assertThat(
        least(roasted(lamb().step(aStep("brown").takes(10).burner(BurnerSize.SMALL).in("pot")), 1)))
        .isEqualTo(LIGHT);
  }

  @Test
  void roasted_once_it_is_only_warmed_and_what_is_no_whole_roast_is_baked_as_it_likes() {
    assertThat(least(roasted(lamb(), 1).step(aStep("warm").takes(20).bake(100)))).isNull();
    assertThat(least(roasted(lamb(), 1),
        aDish("slices").tags("whole roast").step(aStep("warm").bake(100).uses("lamb", "roast").in("dish"))))
        .isNull();
    assertThat(least(roasted(aDish("lamb").tags("raw meat"), 1))).isNull();
  }

  @Test
  void bread_that_was_baked_before_it_goes_in_roasts_nothing() {
    assertThat(least(aDish("crumbs").step(aStep("toast").bake(150).in("tray")),
        lamb().step(aStep("roast").takes(90).bake(180).uses("crumbs", "toast").in("dish"))))
        .isEqualTo(LIGHT);
  }

  @Test
  void every_stage_is_hot_enough_and_a_mode_of_which_nothing_is_said_always() {
    Work work = Work.of(aSupperOf(roasted(lamb(), 1)).event());
    RoastOvens ovens = new RoastOvens(Profile.read("us-service"), new Cards(work));
    List<Setting> falling = List.of(Setting.fahrenheit(450), Setting.fahrenheit(325));

    assertThat(ovens.allows(work.steps().getFirst(), Oven.STILL, falling)).isFalse();
    assertThat(ovens.allows(work.steps().getFirst(), Oven.FAN, falling)).isTrue();
    assertThat(ovens.allows(work.steps().getFirst(), "steam", falling)).isTrue();
  }
}
