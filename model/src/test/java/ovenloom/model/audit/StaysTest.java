package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.daysBefore;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.menu.Link;

/** The gratin is baked from 17:00 to 17:30 in one dish, and supper is at 19:00. */
class StaysTest {

  private final KitchenRule rule = new Stays();
  private final Plans gratin = aGratin();

  @Test
  void a_gratin_that_waits_nowhere_for_an_hour_and_a_half_is_a_break() {
    assertThat(gratin.heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(90);
      assertThat(each.what()).isEqualTo("it is nowhere for 90 min");
    });
  }

  @Test
  void it_may_wait_on_the_counter() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:30").counter("19:00")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void it_may_cool_spend_an_hour_in_the_fridge_and_come_out_again() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:30").counter("17:45")
        .shelf("18:45", "fridge", "top")
        .counter("19:00")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void it_may_wait_in_the_hot_cabinet_or_in_its_oven_held_or_off() {
    var suppers = List.of(
        aStay("gratin", "bake", "17:30").shelf("19:00", "cabinet", "upper"),
        aStay("gratin", "bake", "17:30").oven("19:00", "oven", 80),
        aStay("gratin", "bake", "17:30").ovenThatIsOff("19:00", "oven"));

    assertThat(suppers).allSatisfy(stay -> assertThat(aGratin().with(stay).heldAgainst(rule)).isEmpty());
  }

  @Test
  void a_minute_that_is_missing_at_the_end_is_a_minute_nowhere() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:30").counter("18:59")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void waiting_that_begins_too_late_or_lasts_too_long_is_off_by_its_minutes() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:33").counter("19:02")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(5));
  }

  @Test
  void from_the_cabinet_to_the_counter_is_no_waiting() {
    assertThat(
        gratin.with(aStay("gratin", "bake", "17:30").shelf("18:45", "cabinet", "upper").counter("19:00"))
            .heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.unit()).isEqualTo(Break.Unit.TIMES);
          assertThat(each.what()).startsWith("it waits in a hot place");
        });
  }

  @Test
  void the_oven_for_a_while_and_then_the_counter_is_no_waiting() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:30").oven("18:45", "oven", 80).counter("19:00"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void into_the_fridge_out_and_in_again_is_once_too_often() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:30").shelf("18:00", "fridge", "top")
        .counter("18:15")
        .shelf("18:45", "fridge", "top")
        .counter("19:00")).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void from_fridge_to_fridge_is_once_too_often() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:30").shelf("18:00", "fridge", "top")
        .shelf("19:00", "fridge", "middle")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void from_counter_to_counter_is_once_too_often() {
    assertThat(
        gratin.with(aStay("gratin", "bake", "17:30").counter("18:00").counter("19:00")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void a_shelf_for_each_vessel_and_no_more() {
    assertThat(
        gratin.with(aStay("gratin", "bake", "17:30").shelf("19:00", "fridge", "top", "middle", "bottom"))
            .heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(2);
          assertThat(each.unit()).isEqualTo(Break.Unit.PIECES);
        });
  }

  @Test
  void food_without_a_vessel_has_one_shelf() {
    var ham = aSupperOf(aDish("ham").step(aStep("slice")));

    assertThat(aPlanFor(ham).with(aRun("ham", "slice", "17:00", 10))
        .with(aStay("ham", "slice", "17:10").shelf("19:00", "fridge", "top"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(ham).with(aRun("ham", "slice", "17:00", 10))
        .with(aStay("ham", "slice", "17:10").shelf("19:00", "fridge"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void nothing_waits_in_a_place_or_on_a_shelf_that_is_not_there() {
    assertThat(
        gratin.with(aStay("gratin", "bake", "17:30").shelf("19:00", "larder", "top")).heldAgainst(rule))
        .extracting(Break::what)
        .containsExactly("there is no \"larder\"");
    assertThat(
        aGratin().with(aStay("gratin", "bake", "17:30").shelf("19:00", "fridge", "drawer")).heldAgainst(rule))
        .extracting(Break::what)
        .containsExactly("fridge has no shelf \"drawer\"");
  }

  @Test
  void an_oven_holds_only_what_it_baked() {
    var mash = aPlanFor(aSupperOf(aDish("mash").step(aStep("boil"))))
        .with(aRun("mash", "boil", "17:00", 10))
        .with(aStay("mash", "boil", "17:10").oven("19:00", "oven", 80));

    assertThat(mash.heldAgainst(rule)).extracting(Break::what)
        .containsExactly("it waits in oven, where it was not baked");
  }

  @Test
  void food_waits_at_the_hold_mark_and_at_no_other() {
    assertThat(gratin.with(aStay("gratin", "bake", "17:30").oven("19:00", "oven", 95)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(15);
          assertThat(each.unit()).isEqualTo(Break.Unit.KELVINS);
        });
  }

  @Test
  void a_sauce_waits_on_its_own_burner_and_on_no_other() {
    var sauce = aSupperOf(aDish("sauce").step(aStep("simmer").burner(BurnerSize.SMALL).in("pot")));

    assertThat(aPlanFor(sauce)
        .with(aRun("sauce", "simmer", "17:00", 10).burners("small"))
        .with(aStay("sauce", "simmer", "17:10").burners("19:00", "small"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(sauce)
        .with(aRun("sauce", "simmer", "17:00", 10).burners("small"))
        .with(aStay("sauce", "simmer", "17:10").burners("19:00", "large"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void of_two_pots_in_one_run_each_waits_on_the_burner_it_was_on() {
    var sauce = aSupperOf(aDish("sauce").batches(2)
        .step(
            aStep("simmer").burner(BurnerSize.SMALL).in("pot").together(2)));
    var swapped = aPlanFor(sauce)
        .with(aRun("sauce", "simmer", "17:00", 10).batches(1, 2).burners("small", "large"))
        .with(aStay("sauce", "simmer", "17:10").batch(1).burners("19:00", "small"))
        .with(aStay("sauce", "simmer", "17:10").batch(2).burners("19:00", "small"));

    assertThat(swapped.heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("sauce/simmer (batch 2)"));
  }

  @Test
  void a_sauce_that_was_on_no_burner_waits_on_none() {
    var sauce = aSupperOf(aDish("sauce").step(aStep("whisk")));

    assertThat(aPlanFor(sauce)
        .with(aRun("sauce", "whisk", "17:00", 10))
        .with(aStay("sauce", "whisk", "17:10").burners("19:00"))
        .heldAgainst(rule)).hasSize(1);
  }

  @Test
  void dough_waits_in_its_tub_until_the_last_tray_has_taken_its_part() {
    var rolls = aSupperOf(
        aDish("rolls").batches(2).step(aStep("mix").once().in("bowl")).step(aStep("shape")));
    var plan = aPlanFor(rolls)
        .with(aRun("rolls", "mix", "17:00", 10).batches(1, 2))
        .with(aRun("rolls", "shape", "18:00", 10).batch(1))
        .with(aRun("rolls", "shape", "18:50", 10).batch(2))
        .with(aStay("rolls", "shape", "18:10").counter("19:00"));

    assertThat(plan.with(aStay("rolls", "mix", "17:10").batches(1, 2).counter("18:50")).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void dough_that_is_gone_after_the_first_tray_is_fifty_minutes_nowhere() {
    var rolls = aSupperOf(
        aDish("rolls").batches(2).step(aStep("mix").once().in("bowl")).step(aStep("shape")));
    var plan = aPlanFor(rolls)
        .with(aRun("rolls", "mix", "17:00", 10).batches(1, 2))
        .with(aRun("rolls", "shape", "18:00", 10).batch(1))
        .with(aRun("rolls", "shape", "18:50", 10).batch(2))
        .with(aStay("rolls", "shape", "18:10").counter("19:00"));

    assertThat(plan.with(aStay("rolls", "mix", "17:10").batches(1, 2).counter("18:00")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(50));
  }

  @Test
  void two_braises_in_one_vessel_wait_as_one() {
    var braise = aSupperOf(aDish("braise").batches(2).step(aStep("cook").in("pot").togetherInOneVessel(2)));
    var cooked = aRun("braise", "cook", "18:00", 10).batches(1, 2);

    assertThat(aPlanFor(braise).with(cooked)
        .with(aStay("braise", "cook", "18:10").batches(1, 2).shelf("19:00", "cabinet", "upper"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(braise).with(cooked)
        .with(aStay("braise", "cook", "18:10").batch(1).shelf("19:00", "cabinet", "upper"))
        .with(aStay("braise", "cook", "18:10").batch(2).shelf("19:00", "cabinet", "lower"))
        .heldAgainst(rule)).as("it is one pot").hasSize(3);
  }

  @Test
  void what_waits_in_one_vessel_for_waves_waits_until_the_last_of_them_is_due() {
    var braise = aSupperOf(
        aDish("braise").batches(2).waves().step(aStep("cook").in("pot").togetherInOneVessel(2)));
    var cooked = aRun("braise", "cook", "18:00", 10).batches(1, 2);

    assertThat(aPlanFor(braise).with(cooked)
        .with(aStay("braise", "cook", "18:10").batches(1, 2).shelf("19:05", "cabinet", "upper"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(braise).with(cooked)
        .with(aStay("braise", "cook", "18:10").batches(1, 2).shelf("19:00", "cabinet", "upper"))
        .heldAgainst(rule)).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(5));
  }

  @Test
  void two_braises_in_two_vessels_wait_each_by_itself() {
    var braise = aSupperOf(aDish("braise").batches(2).step(aStep("cook").in("pot").together(2)));

    assertThat(aPlanFor(braise).with(aRun("braise", "cook", "18:00", 10).batches(1, 2))
        .with(aStay("braise", "cook", "18:10").batch(1).shelf("19:00", "cabinet", "upper"))
        .with(aStay("braise", "cook", "18:10").batch(2).counter("19:00"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void what_is_taken_at_once_or_is_served_waits_nowhere() {
    var roast = aSupperOf(aDish("roast").step(aStep("rest")).step(aStep("carve").serve()));

    assertThat(aPlanFor(roast)
        .with(aRun("roast", "rest", "18:50", 10))
        .with(aRun("roast", "carve", "19:00", 10))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void nothing_of_a_chore_or_of_what_was_served_waits() {
    var supper = aSupperOf(aChore("table").step(aStep("lay")), aDish("roast").step(aStep("carve").serve()));
    var plan = aPlanFor(supper)
        .with(aRun("table", "lay", "18:00", 10))
        .with(aRun("roast", "carve", "19:00", 5));

    assertThat(plan.heldAgainst(rule)).isEmpty();
    assertThat(plan
        .with(aStay("table", "lay", "18:10").counter("19:00"))
        .with(aStay("roast", "carve", "19:05").counter("19:08"))
        .heldAgainst(rule)).extracting(Break::off).containsExactly(50L, 3L);
  }

  @Test
  void the_onions_wait_until_the_last_who_takes_of_them_but_not_for_who_joins_alongside() {
    var pilaf = aSupperOf(aDish("pilaf")
        .step(aStep("fry"))
        .step(aStep("stir").after("fry"))
        .step(aStep("top").after("fry").after(new Link(Link.Kind.ALONGSIDE, "", "stir", 0, null))));

    assertThat(aPlanFor(pilaf)
        .with(aRun("pilaf", "fry", "18:00", 10))
        .with(aRun("pilaf", "stir", "18:20", 30))
        .with(aRun("pilaf", "top", "18:40", 20))
        .with(aStay("pilaf", "fry", "18:10").counter("18:40"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void stock_waits_for_the_last_who_takes_of_it_whoever_the_menu_names_first() {
    var supper = aSupperOf(
        aDish("stock").step(aStep("boil")),
        aDish("soup").step(aStep("thin").uses("stock", "boil")),
        aDish("sauce").step(aStep("loosen").takes(60).uses("stock", "boil")));

    assertThat(aPlanFor(supper)
        .with(aRun("stock", "boil", "17:00", 10))
        .with(aRun("soup", "thin", "18:50", 10))
        .with(aRun("sauce", "loosen", "18:00", 60))
        .with(aStay("stock", "boil", "17:10").counter("18:50"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void the_same_food_is_not_in_two_places() {
    assertThat(gratin
        .with(aStay("gratin", "bake", "17:30").counter("19:00"))
        .with(aStay("gratin", "bake", "17:30").shelf("19:00", "cabinet", "upper"))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("it is in 2 places at once"));
  }

  @Test
  void what_was_made_a_day_ahead_waits_a_day_ahead() {
    var tart = aSupperOf(aDish("tart").step(aStep("bake")));

    assertThat(aPlanFor(tart)
        .with(aRun("tart", "bake", daysBefore(1, "18:00"), 10))
        .with(aStay("tart", "bake", daysBefore(1, "18:10")).shelf("19:00", "fridge", "top"))
        .heldAgainst(rule)).isEmpty();
  }

  private static Plans aGratin() {
    return aPlanFor(aSupperOf(aDish("gratin").step(aStep("bake").takes(30).bake(180).in("dish"))))
        .with(aRun("gratin", "bake", "17:00", 30).oven("oven", 180));
  }
}
