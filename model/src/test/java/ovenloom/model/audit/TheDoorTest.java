package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import org.junit.jupiter.api.Test;
import ovenloom.model.menu.Need;
import ovenloom.model.plan.HandsOn.Act;

/** A ham bakes from 17:00 to 18:00, loaded in its first minute and unloaded in its last. */
class TheDoorTest {

  private final KitchenRule rule = new TheDoor();

  private static Dishes roll(String name) {
    return aDish(name).step(aStep("bake").takes(10).bake(180));
  }

  private final Events supper = aSupperOf(
      aDish("ham").step(aStep("bake").takes(60).bake(180).hands(new Need.Moment.At(20, 2, false))),
      aDish("sponge").step(aStep("bake").takes(30).bake(180).doorShut(10)),
      aDish("choux").step(aStep("bake").takes(30).bake(180).doorShut(Need.Bake.TO_THE_END)),
      aDish("meringue").step(aStep("bake").takes(30).bake(180).load(2).unload(3)),
      aDish("basted")
          .step(aStep("bake").takes(30).bake(180).doorShut(10).hands(new Need.Moment.At(10, 2, false))),
      roll("rye"), roll("oat"), roll("malt"));

  private static Runs ham() {
    return aRun("ham", "bake", "17:00", 60).oven("oven", 180).load("Host").unload("Host");
  }

  private static Runs bake(String dish, String from, int minutes) {
    return aRun(dish, "bake", from, minutes).oven("oven", 180).load("Host").unload("Host");
  }

  @Test
  void a_ham_bears_two_openings_by_others_and_not_a_third() {
    var two = aPlanFor(supper).with(ham()).with(bake("rye", "17:10", 10));
    var four = aPlanFor(supper).with(ham()).with(bake("rye", "17:10", 10)).with(bake("oat", "17:25", 10));

    assertThat(two.heldAgainst(rule)).isEmpty();
    assertThat(four.heldAgainst(rule)).singleElement().satisfies(each -> {
      assertThat(each.off()).isEqualTo(2);
      assertThat(each.unit()).isEqualTo(Break.Unit.OPENINGS);
      assertThat(each.who()).containsExactly("ham/bake", "oven");
    });
  }

  @Test
  void one_out_and_one_in_at_the_same_minute_by_the_same_cook_are_one_opening() {
    var inTheSameMinute = aPlanFor(supper).with(ham())
        .with(bake("rye", "17:00", 10))
        .with(bake("oat", "17:09", 10))
        .heldAgainst(rule);
    var aMinuteApart = aPlanFor(supper).with(ham())
        .with(bake("rye", "17:00", 10))
        .with(bake("oat", "17:10", 10))
        .heldAgainst(rule);
    var byTwo = aPlanFor(supper).with(ham())
        .with(bake("rye", "17:00", 10))
        .with(aRun("oat", "bake", "17:09", 10).oven("oven", 180).load("Guest").unload("Host"))
        .heldAgainst(rule);

    assertThat(inTheSameMinute).isEmpty();
    assertThat(aMinuteApart).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(byTwo).singleElement().satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void what_goes_in_and_out_with_the_ham_does_not_count_against_it() {
    var breaks = aPlanFor(supper).with(ham())
        .with(bake("rye", "17:00", 10))
        .with(bake("oat", "17:50", 10))
        .with(bake("malt", "17:59", 10))
        .heldAgainst(rule);

    assertThat(breaks).isEmpty();
  }

  @Test
  void its_own_turning_counts_for_others_and_not_for_itself() {
    var turned = ham().hands(Act.WORK, Clock.at("17:20"), Clock.at("17:22"), "Host");
    var rye = bake("rye", "17:15", 10);

    assertThat(aPlanFor(supper).with(turned).with(rye).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(turned).with(bake("sponge", "17:05", 30)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(turned).with(bake("sponge", "17:11", 30)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("sponge/bake", "oven"));
  }

  /** Loaded at 17:00, so shut from 17:01 to 17:11. */
  @Test
  void nobody_opens_the_door_on_a_sponge_in_its_first_ten_minutes() {
    assertThat(
        aPlanFor(supper).with(bake("sponge", "17:00", 30)).with(bake("rye", "17:10", 10)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(
        aPlanFor(supper).with(bake("sponge", "17:00", 30)).with(bake("rye", "17:11", 10)).heldAgainst(rule))
        .isEmpty();
    assertThat(
        aPlanFor(supper).with(bake("sponge", "17:00", 30)).with(bake("rye", "16:51", 10)).heldAgainst(rule))
        .isEmpty();
    assertThat(
        aPlanFor(supper).with(bake("sponge", "17:00", 30)).with(bake("rye", "16:52", 10)).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void on_choux_nobody_opens_it_until_it_comes_out() {
    assertThat(
        aPlanFor(supper).with(bake("choux", "17:00", 30)).with(bake("rye", "17:28", 10)).heldAgainst(rule))
        .hasSize(1);
    assertThat(
        aPlanFor(supper).with(bake("choux", "17:00", 30)).with(bake("rye", "17:29", 10)).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void nor_the_one_who_bakes_it() {
    var tooSoon = bake("basted", "17:00", 30).hands(Act.WORK, Clock.at("17:10"), Clock.at("17:12"), "Host");
    var inTime = bake("basted", "17:00", 30).hands(Act.WORK, Clock.at("17:11"), Clock.at("17:13"), "Host");

    assertThat(aPlanFor(supper).with(tooSoon).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(supper).with(inTime).heldAgainst(rule)).isEmpty();
  }

  @Test
  void loading_of_two_minutes_and_unloading_of_three_are_openings_as_long() {
    var choux = bake("choux", "17:01", 30);

    assertThat(aPlanFor(supper).with(choux).with(bake("meringue", "17:00", 30)).heldAgainst(rule)).hasSize(1);
    assertThat(aPlanFor(supper).with(choux).with(bake("meringue", "17:30", 30)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).with(bake("choux", "17:26", 30))
        .with(bake("meringue", "17:00", 30))
        .heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void what_waits_in_the_oven_is_taken_out_at_the_end_of_its_wait() {
    var plan = aPlanFor(supper).with(aRun("rye", "bake", "16:40", 10).oven("oven", 180).load("Host"))
        .with(bake("choux", "17:00", 30));

    assertThat(
        plan.with(aStay("rye", "bake", "16:50").oven("17:20", "oven", 180).unload("Host")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.who()).containsExactly("choux/bake", "oven"));
  }

  @Test
  void and_not_at_the_end_of_its_bake() {
    var plan = aPlanFor(supper).with(aRun("rye", "bake", "17:05", 10).oven("oven", 180))
        .with(aStay("rye", "bake", "17:15").oven("17:50", "oven", 180))
        .with(bake("sponge", "17:10", 30))
        .with(bake("oat", "17:22", 10));

    assertThat(plan.heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_baker_who_is_there_throughout_opens_the_door_himself() {
    var rye = aSupperOf(aDish("ham").step(aStep("bake").takes(60).bake(180)),
        aDish("rye").step(aStep("bake").takes(10).bake(180).hands()), roll("oat"));
    var plan = aPlanFor(rye).with(ham())
        .with(aRun("rye", "bake", "17:00", 10).oven("oven", 180).work("Host"))
        .with(bake("oat", "17:09", 10));

    assertThat(plan.heldAgainst(rule)).isEmpty();
  }

  @Test
  void a_bake_too_short_to_be_loaded_and_unloaded_is_for_another_rule() {
    assertThat(
        aPlanFor(supper).with(aRun("meringue", "bake", "17:00", 1).oven("oven", 180)).heldAgainst(rule))
        .isEmpty();
  }

  @Test
  void another_oven_has_another_door() {
    var elsewhere = List.of("rye", "oat", "malt");
    var plan = aPlanFor(supper).with(ham());
    elsewhere.forEach(dish -> plan.with(aRun(dish, "bake", "17:10", 10).oven("other oven", 180)));

    assertThat(plan.heldAgainst(rule)).isEmpty();
  }

  @Test
  void rye_that_goes_in_as_the_ham_is_turned_is_an_opening_by_others() {
    var turned = ham().hands(Act.WORK, Clock.at("17:20"), Clock.at("17:22"), "Host");

    assertThat(aPlanFor(supper).with(turned)
        .with(bake("rye", "17:20", 10))
        .with(bake("oat", "17:29", 10))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  /** The guest unloads the oat as the host, who also turned it, loads the malt: two openings in one minute. */
  @Test
  void whoever_unloads_is_who_the_plan_says_unloads() {
    var oat = aRun("oat", "bake", "17:00", 10).oven("oven", 180)
        .load("Host")
        .hands(Act.WORK, Clock.at("17:09"), Clock.at("17:10"), "Host")
        .unload("Guest");

    assertThat(aPlanFor(supper).with(ham()).with(oat).with(bake("malt", "17:09", 10)).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void of_two_trays_of_which_one_waits_the_other_is_taken_out() {
    var rolls = aSupperOf(aDish("rolls").batches(2).step(aStep("bake").takes(10).bake(180).together(2)),
        aDish("choux").step(aStep("bake").takes(30).bake(180).doorShut(Need.Bake.TO_THE_END)));
    var baked = aPlanFor(rolls).with(aRun("rolls", "bake", "16:55", 10).batches(1, 2).oven("oven", 180))
        .with(aRun("choux", "bake", "17:00", 30).oven("oven", 180))
        .with(aStay("rolls", "bake", "17:05").batch(1).oven("17:50", "oven", 180));

    assertThat(baked.heldAgainst(rule)).hasSize(1);
    assertThat(
        baked.with(aStay("rolls", "bake", "17:05").batch(2).oven("17:50", "oven", 180)).heldAgainst(rule))
        .isEmpty();
  }
}
