package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aCook;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Logs.aLog;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.menu.Link;

/** The host is there from 9:00 to 12:00 and from 15:00 to 19:00, which is supper. */
class SomeoneThereTest {

  private final KitchenRule rule = new SomeoneThere();
  private final Cook host = aCook("Host", between("9:00", "12:00"), between("15:00", "19:00"));

  @Test
  void food_is_first_set_down_by_someone() {
    assertThat(soaked("9:00", 120).heldAgainst(rule)).isEmpty();
    assertThat(soaked("12:00", 240).heldAgainst(rule)).as("the minute the hours end counts").isEmpty();
    assertThat(soaked("8:59", 240).heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(1);
      assertThat(each.who()).containsExactly("beans/soak is begun");
    });
    assertThat(soaked("12:30", 240).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).as("half an hour after noon").isEqualTo(30));
  }

  @Test
  void what_is_neither_food_nor_anywhere_is_begun_by_itself() {
    var supper = aSupperOf(aChore("oven").step(aStep("clean").in("bowl")),
        aDish("air").step(aStep("breathe")))
        .cooks(host);

    assertThat(aPlanFor(supper)
        .with(aRun("oven", "clean", "13:00", 10))
        .with(aRun("air", "breathe", "13:00", 10))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_break_is_being_there() {
    var rests = new Cook("Host", List.of(between("9:00", "19:00")), List.of(between("12:00", "15:00")),
        Set.of());
    var beans = aSupperOf(aDish("beans").step(aStep("soak").in("bowl"))).cooks(rests);

    assertThat(aPlanFor(beans).with(aRun("beans", "soak", "13:00", 10)).heldAgainst(rule)).isEmpty();
  }

  @Test
  void from_the_counter_to_the_fridge_takes_someone_and_out_again_too() {
    assertThat(
        tart(aStay("tart", "chop", "10:10").counter("12:00").shelf("15:00", "fridge", "top").counter("19:00"))
            .heldAgainst(rule))
        .isEmpty();
    assertThat(
        tart(aStay("tart", "chop", "10:10").counter("12:10").shelf("14:45", "fridge", "top").counter("19:00"))
            .heldAgainst(rule))
        .extracting(Break::off)
        .containsExactly(10L, 15L);
  }

  @Test
  void out_of_the_oven_takes_someone_unless_it_stays_on_its_rack() {
    var ham = aSupperOf(aDish("ham").step(aStep("bake").takes(60).bake(180).unattended().in("dish")))
        .cooks(host);
    var baked = aRun("ham", "bake", "11:30", 60).oven("oven", 180);

    assertThat(
        aPlanFor(ham).with(baked).with(aStay("ham", "bake", "12:30").counter("19:00")).heldAgainst(rule))
        .extracting(Break::who)
        .containsExactly(List.of("food of ham/bake goes from oven to the counter"));
    assertThat(aPlanFor(ham).with(baked)
        .with(aStay("ham", "bake", "12:30").oven("19:00", "oven", 80))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_pot_that_stays_on_its_burner_is_not_moved() {
    var stock = aSupperOf(
        aDish("stock").step(aStep("simmer").takes(60).burner(BurnerSize.SMALL).in("pot").unattended()))
        .cooks(host);

    assertThat(aPlanFor(stock)
        .with(aRun("stock", "simmer", "11:30", 60).burners("small"))
        .with(aStay("stock", "simmer", "12:30").burners("19:00", "small"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void dough_that_proves_on_the_shelf_where_it_waited_is_not_moved() {
    assertThat(proved("top").heldAgainst(rule)).isEmpty();
    assertThat(proved("middle").heldAgainst(rule)).singleElement()
        .satisfies(
            each -> assertThat(each.who()).containsExactly("food of dough/mix goes from fridge to fridge"));
  }

  @Test
  void what_goes_straight_from_step_to_step_is_moved_by_someone() {
    var dough = aSupperOf(aDish("dough")
        .step(aStep("mix").appliance("mixer").in("bowl"))
        .step(aStep("prove").shelf("fridge"))).cooks(host);
    var plan = aPlanFor(dough)
        .with(aRun("dough", "mix", "11:55", 10))
        .with(aRun("dough", "prove", "12:05", 415).shelves("fridge", "top"));

    assertThat(plan.heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(5);
      assertThat(each.who()).containsExactly("food of dough/mix goes from an appliance to fridge");
    });
  }

  @Test
  void what_is_chopped_and_then_stirred_on_the_counter_is_not_moved() {
    var salad = aSupperOf(aDish("salad").step(aStep("chop").in("bowl")).step(aStep("wilt").takes(480)))
        .cooks(host);

    assertThat(aPlanFor(salad)
        .with(aRun("salad", "chop", "11:00", 60))
        .with(aRun("salad", "wilt", "12:30", 390))
        .with(aStay("salad", "chop", "12:00").counter("12:30"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void food_that_joins_alongside_is_brought_by_someone() {
    var pilaf = aSupperOf(aDish("pilaf")
        .step(aStep("fry").takes(60).burner(BurnerSize.SMALL).in("pot").unattended())
        .step(aStep("top").takes(400).in("bowl").after(new Link(Link.Kind.ALONGSIDE, "", "fry", 0, null))))
        .cooks(host);

    assertThat(aPlanFor(pilaf)
        .with(aRun("pilaf", "fry", "11:40", 60).burners("small"))
        .with(aRun("pilaf", "top", "12:20", 400))
        .heldAgainst(rule)).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(20));
  }

  @Test
  void each_tray_of_dough_is_taken_from_where_the_tub_is_just_then() {
    var rolls = aSupperOf(aDish("rolls").batches(2)
        .step(aStep("mix").once().in("bowl"))
        .step(aStep("shape").in("tray"))).cooks(host);
    var plan = aPlanFor(rolls)
        .with(aRun("rolls", "mix", "10:00", 10).batches(1, 2))
        .with(aRun("rolls", "shape", "13:30", 10).batch(1))
        .with(aRun("rolls", "shape", "18:50", 10).batch(2))
        .with(aStay("rolls", "mix", "10:10").batches(1, 2).counter("13:30").shelf("18:50", "fridge", "top"))
        .with(aStay("rolls", "shape", "13:40").counter("19:00"));

    assertThat(plan.heldAgainst(rule)).extracting(Break::who)
        .containsExactly(
            List.of("food of rolls/mix goes from the counter to fridge"));
  }

  @Test
  void a_dish_is_carried_to_the_table_by_someone() {
    var late = aSupperOf(aDish("beans").step(aStep("soak").in("bowl")))
        .cooks(aCook("Host", between("9:00", "18:59")));

    assertThat(soaked("18:50", 10).heldAgainst(rule)).as("at seven the host is still there").isEmpty();
    assertThat(aPlanFor(late).with(aRun("beans", "soak", "18:50", 10)).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.who())
            .containsExactly("food of beans/soak goes from the counter to the table"));
  }

  @Test
  void a_dial_is_turned_and_an_oven_switched_on_and_off_by_someone() {
    var supper = aSupperOf(aDish("air").step(aStep("breathe"))).cooks(host);

    assertThat(aPlanFor(supper).with(aLog("oven")
        .warming(180, "9:00", "9:16")
        .at(180, "9:16", "10:00")
        .at(100, "10:00", "12:00")
        .warming(180, "15:00", "15:16")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(aLog("oven")
        .warming(180, "8:50", "9:06")
        .at(180, "9:06", "12:30")
        .at(100, "12:30", "13:00")
        .warming(180, "14:30", "14:46")
        .at(180, "14:46", "15:30")).heldAgainst(rule)).extracting(Break::who)
        .containsExactly(
            List.of("oven is switched on"),
            List.of("oven is turned to 100 C"),
            List.of("oven is switched off"),
            List.of("oven is switched on"));
  }

  @Test
  void reaching_the_mark_is_not_turning_the_dial() {
    var supper = aSupperOf(aDish("air").step(aStep("breathe"))).cooks(host);

    assertThat(aPlanFor(supper).with(aLog("oven")
        .warming(180, "11:50", "12:06")
        .at(180, "12:06", "16:00")).heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_roast_left_alone_for_three_hours_cooks_unwatched() {
    var ham = aSupperOf(aDish("ham").step(aStep("bake").takes(240).bake(100))).cooks(host);

    assertThat(aPlanFor(ham).with(aRun("ham", "bake", "11:30", 240).oven("oven", 100)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(180);
          assertThat(each.when()).isEqualTo(between("12:00", "15:00"));
        });
  }

  @Test
  void to_the_last_minute_of_the_hours_it_is_watched() {
    var ham = aSupperOf(aDish("ham").step(aStep("bake").takes(60).bake(100))).cooks(host);

    assertThat(aPlanFor(ham).with(aRun("ham", "bake", "18:00", 60).oven("oven", 100)).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void what_may_cook_unattended_may() {
    var ham = aSupperOf(aDish("ham").step(aStep("bake").takes(240).bake(100).unattended())).cooks(host);

    assertThat(aPlanFor(ham).with(aRun("ham", "bake", "11:30", 450).oven("oven", 100)).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void a_pot_boils_over_while_nobody_is_there() {
    var stock = aSupperOf(aDish("stock").step(aStep("simmer").takes(60).burner(BurnerSize.SMALL)))
        .cooks(host);

    assertThat(aPlanFor(stock).with(aRun("stock", "simmer", "11:01", 60).burners("small"))
        .with(aStay("stock", "simmer", "12:01").burners("19:00", "small"))
        .heldAgainst(rule)).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  /** The host buys bread for half an hour, a guest is there from 17:00 on, and stock simmers for an hour. */
  private Plans shopping(String bought, String simmered) {
    var supper = aSupperOf(aDish("stock").step(aStep("simmer").takes(60).burner(BurnerSize.SMALL)),
        aDish("bread").step(aStep("buy").takes(30).hands().away()))
        .cooks(host, aCook("Guest", between("17:00", "19:00")));
    return aPlanFor(supper).with(aRun("bread", "buy", bought, 30).work("Host"))
        .with(aRun("stock", "simmer", simmered, 60).burners("small"));
  }

  @Test
  void who_is_out_at_the_shop_watches_nothing_and_carries_nothing() {
    assertThat(shopping("10:00", "10:30").with(aStay("stock", "simmer", "11:30").burners("19:00", "small"))
        .heldAgainst(rule)).as("put on by who is back").isEmpty();
    assertThat(shopping("10:00", "9:15").with(aStay("stock", "simmer", "10:15").counter("19:00"))
        .heldAgainst(rule))
        .as("alone for a quarter of an hour, and taken off by nobody")
        .extracting(Break::off)
        .containsExactlyInAnyOrder(15L, 15L);
    assertThat(shopping("17:30", "17:15").with(aStay("stock", "simmer", "18:15").counter("19:00"))
        .heldAgainst(rule)).as("the guest is there").isEmpty();
  }

  @Test
  void between_two_errands_one_is_there() {
    var supper = aSupperOf(aDish("bread").step(aStep("buy").takes(30).hands().away().in("bowl")),
        aDish("cheese").step(aStep("fetch").takes(30).hands().away().in("tray"))).cooks(host);

    assertThat(aPlanFor(supper).with(aRun("bread", "buy", "10:00", 30).work("Host"))
        .with(aRun("cheese", "fetch", "10:30", 30).work("Host"))
        .with(aStay("bread", "buy", "10:30").counter("19:00"))
        .with(aStay("cheese", "fetch", "11:00").counter("19:00"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void chopping_needs_no_one_but_the_hands_it_has() {
    assertThat(soaked("11:00", 120).heldAgainst(rule)).isEmpty();
  }

  @Test
  void where_nobody_ever_is_nothing_happens() {
    var nobody = aSupperOf(aDish("beans").step(aStep("soak").in("bowl"))).cooks();

    assertThat(aPlanFor(nobody).with(aRun("beans", "soak", "11:00", 10)).heldAgainst(rule)).hasSize(2);
  }

  private Plans soaked(String from, int minutes) {
    return aPlanFor(aSupperOf(aDish("beans").step(aStep("soak").in("bowl"))).cooks(host))
        .with(aRun("beans", "soak", from, minutes));
  }

  private Plans tart(Waits stay) {
    return aPlanFor(aSupperOf(aDish("tart").step(aStep("chop").in("bowl"))).cooks(host))
        .with(aRun("tart", "chop", "10:00", 10))
        .with(stay);
  }

  private Plans proved(String shelf) {
    var dough = aSupperOf(aDish("dough")
        .step(aStep("mix").in("bowl"))
        .step(aStep("prove").shelf("fridge"))).cooks(host);
    return aPlanFor(dough)
        .with(aRun("dough", "mix", "11:00", 30))
        .with(aStay("dough", "mix", "11:30").shelf("13:00", "fridge", "top"))
        .with(aRun("dough", "prove", "13:00", 360).shelves("fridge", shelf));
  }
}
