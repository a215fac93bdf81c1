package ovenloom.model.menu;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Steps.aStep;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Dishes;

class PouringTest {

  @Test
  void a_stew_stays_in_its_pot_from_frying_to_the_table() {
    var work = workOf(aDish("stew").step(aStep("fry").in("pot")).step(aStep("simmer")));

    assertThat(told(work)).containsExactly("1 pot: stew/fry, stew/simmer; to the table");
  }

  @Test
  void what_is_moved_to_a_dish_leaves_its_bowl() {
    var work = workOf(aDish("pudding").step(aStep("mix").in("bowl")).step(aStep("bake").in("dish")));

    assertThat(told(work)).containsExactly(
        "1 bowl: pudding/mix; moved by pudding/bake", "1 dish: pudding/bake; to the table");
  }

  @Test
  void each_batch_has_vessels_of_its_own() {
    var work = workOf(aDish("pie").batches(2).step(aStep("fill").in("dish")).step(aStep("bake")));

    assertThat(told(work)).containsExactly(
        "1 dish: pie/fill (batch 1), pie/bake (batch 1); to the table",
        "1 dish: pie/fill (batch 2), pie/bake (batch 2); to the table");
  }

  @Test
  void the_bird_goes_to_the_board_and_its_drippings_keep_the_tin_for_the_gravy() {
    var work = workOf(
        aDish("bird").step(aStep("roast").in("tin")).step(aStep("rest").in("board")),
        aDish("gravy").step(aStep("make").in("tin").uses("bird", "roast")));

    assertThat(told(work)).containsExactlyInAnyOrder(
        "1 tin: bird/roast, gravy/make; moved by bird/rest; to the table",
        "1 board: bird/rest; to the table");
  }

  @Test
  void drippings_poured_into_a_pan_leave_the_tin_when_the_last_of_both_has_gone() {
    var work = workOf(
        aDish("bird").step(aStep("roast").in("tin")).step(aStep("rest").in("board")),
        aDish("gravy").step(aStep("make").in("pan").uses("bird", "roast")));

    assertThat(told(work)).contains("1 tin: bird/roast; moved by bird/rest, gravy/make");
  }

  @Test
  void fourteen_plates_are_fourteen() {
    var work = workOf(
        aDish("braise").step(aStep("cook").in("pot")).step(aStep("plate").in("plate", 14).serve()));

    assertThat(told(work)).containsExactly(
        "1 pot: braise/cook; moved by braise/plate", "14 plate: braise/plate; to the table");
    assertThat(work.fillingsOf(1)).extracting(Filling::count).containsExactly(14);
  }

  @Test
  void one_tub_of_dough_is_empty_when_the_last_tray_was_shaped() {
    var work = workOf(aDish("rolls").batches(2)
        .step(aStep("mix").once().in("tub"))
        .step(aStep("prove").once())
        .step(aStep("shape").in("tray")));

    assertThat(told(work)).containsExactly(
        "1 tub: rolls/mix, rolls/prove; moved by rolls/shape (batch 1), rolls/shape (batch 2)",
        "1 tray: rolls/shape (batch 1); to the table",
        "1 tray: rolls/shape (batch 2); to the table");
  }

  @Test
  void trays_iced_all_at_once_stay_on_their_trays() {
    var work = workOf(aDish("buns").batches(2).step(aStep("bake").in("tray")).step(aStep("ice").once()));

    assertThat(told(work)).containsExactly(
        "1 tray: buns/bake (batch 1), buns/ice; to the table",
        "1 tray: buns/bake (batch 2), buns/ice; to the table");
  }

  @Test
  void filling_stirred_into_the_pan_leaves_its_bowl_though_the_step_names_no_vessel() {
    var work = workOf(
        aDish("sauce")
            .step(aStep("fry").first().in("pan"))
            .step(aStep("chop").first().in("bowl"))
            .step(aStep("stir").after("fry").after("chop")));

    assertThat(told(work)).containsExactly(
        "1 pan: sauce/fry, sauce/stir; to the table", "1 bowl: sauce/chop; moved by sauce/stir");
  }

  @Test
  void two_cooks_alike_in_two_dishes_are_still_two_pots() {
    var work = workOf(
        aDish("beans").step(aStep("boil").in("pot")),
        aDish("peas").step(aStep("boil").in("pot")),
        aDish("salad").step(aStep("mix").uses("beans", "boil").uses("peas", "boil")));

    assertThat(told(work)).containsExactly(
        "1 pot: beans/boil, salad/mix; to the table", "1 pot: peas/boil; moved by salad/mix");
  }

  @Test
  void of_yolks_and_whites_in_bowls_folded_in_one_bowl_the_second_bowl_is_emptied() {
    var work = workOf(aDish("sponge")
        .step(aStep("beat the yolks").first().in("bowl"))
        .step(aStep("whisk the whites").first().in("bowl"))
        .step(aStep("fold").after("beat the yolks").after("whisk the whites").in("bowl")));

    assertThat(told(work)).containsExactly(
        "1 bowl: sponge/beat the yolks, sponge/fold; to the table",
        "1 bowl: sponge/whisk the whites; moved by sponge/fold");
  }

  @Test
  void what_was_on_one_tray_and_is_spread_on_two_takes_one_more() {
    var work = workOf(aDish("nuts").step(aStep("toast").in("tray")).step(aStep("spread").in("tray", 2)));

    assertThat(told(work)).containsExactly(
        "1 tray: nuts/toast, nuts/spread; to the table", "1 tray: nuts/spread; to the table");
  }

  @Test
  void a_drink_without_a_vessel_takes_none() {
    assertThat(workOf(aDish("water").step(aStep("pour"))).fillings()).isEmpty();
  }

  private static Work workOf(Dishes... dishes) {
    return Work.of(aSupperOf(dishes).event());
  }

  /** "1 pot: the steps; moved by others; to the table". */
  private static List<String> told(Work work) {
    return work.fillings()
        .stream()
        .map(filling -> filling.count() + " " + filling.vessel() + ": "
            + names(work, filling.steps())
            + (filling.movers().isEmpty() ? "" : "; moved by " + names(work, filling.movers()))
            + (filling.toTheTable() ? "; to the table" : ""))
        .toList();
  }

  private static String names(Work work, List<Integer> steps) {
    return String.join(", ", steps.stream().map(step -> work.steps().get(step).toString()).toList());
  }
}
