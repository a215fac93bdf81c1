package ovenloom.model.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Clock.at;
import static ovenloom.model.audit.Clock.between;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ovenloom.model.kitchen.Cook;
import ovenloom.model.menu.Need.Moment;
import ovenloom.model.plan.HandsOn.Act;

/** The host is at work from 8:00 to 22:00. */
class HandsTest {

  private final KitchenRule rule = new Hands();

  @Test
  void whisking_from_end_to_end_is_whisking() {
    assertThat(whisk(aRun("sauce", "whisk", "18:00", 10).work("Host"))).isEmpty();
  }

  @Test
  void a_sauce_nobody_whisks_is_a_break() {
    assertThat(whisk(aRun("sauce", "whisk", "18:00", 10))).singleElement().satisfies(each -> {
      assertThat(each.unit()).isEqualTo(Break.Unit.TIMES);
      assertThat(each.what()).isEqualTo("nobody has hands for it");
    });
  }

  @Test
  void whisking_that_stops_two_minutes_before_the_end_is_two_minutes_off() {
    assertThat(whisk(aRun("sauce", "whisk", "18:00", 10).hands(Act.WORK, at("18:00"), at("18:08"), "Host")))
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(2));
  }

  @Test
  void a_step_without_hands_has_none() {
    var stock = aSupperOf(aDish("stock").step(aStep("simmer")));

    assertThat(aPlanFor(stock).with(aRun("stock", "simmer", "18:00", 10)).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(stock).with(aRun("stock", "simmer", "18:00", 10).work("Host")).heldAgainst(rule))
        .hasSize(1);
  }

  @Test
  void the_first_and_the_last_minutes_are_the_first_and_the_last() {
    var jam = aSupperOf(aDish("jam").step(
        aStep("boil").takes(30).hands(new Moment.First(5)).hands(new Moment.Last(4))));

    assertThat(aPlanFor(jam).with(aRun("jam", "boil", "18:00", 30)
        .hands(Act.WORK, at("18:00"), at("18:05"), "Host")
        .hands(Act.WORK, at("18:26"), at("18:30"), "Host")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(jam).with(aRun("jam", "boil", "18:00", 30)
        .hands(Act.WORK, at("18:01"), at("18:06"), "Host")
        .hands(Act.WORK, at("18:25"), at("18:29"), "Host")).heldAgainst(rule)).extracting(Break::off)
        .containsExactly(1L, 1L);
  }

  @Test
  void a_tray_turned_in_mid_bake_needs_a_cook_then() {
    assertThat(tray(30, 20, "18:20", false)).isEmpty();
    var nobody = aPlanFor(trays(20, false)).with(
        aRun("tart", "bake", "18:00", 30).oven("oven", 180).load("Host").unload("Host"));

    assertThat(nobody.heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("nobody has hands for it"));
  }

  @Test
  void it_may_be_turned_three_minutes_sooner_or_later() {
    assertThat(tray(30, 20, "18:17", false)).isEmpty();
    assertThat(tray(30, 20, "18:23", false)).isEmpty();
  }

  @Test
  void four_minutes_later_is_one_too_many() {
    assertThat(tray(30, 20, "18:24", false)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(tray(30, 20, "18:16", false)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void what_is_sharp_does_not_slip() {
    assertThat(tray(30, 20, "18:20", true)).isEmpty();
    assertThat(tray(30, 20, "18:21", true)).hasSize(1);
  }

  @Test
  void a_longer_bake_is_turned_later() {
    assertThat(tray(45, 20, "18:30", true)).as("20 of 30 written minutes, 45 booked").isEmpty();
    assertThat(tray(31, 15, "18:16", true)).as("15.5 rounds up").isEmpty();
    assertThat(tray(31, 15, "18:15", true)).hasSize(1);
  }

  @Test
  void it_is_turned_before_it_is_out() {
    assertThat(tray(30, 27, "18:28", false)).isEmpty();
    assertThat(tray(30, 27, "18:29", false)).singleElement()
        .satisfies(each -> assertThat(each.off()).as("two minutes from 18:29").isEqualTo(1));
  }

  @Test
  void a_bake_is_loaded_and_unloaded_by_someone() {
    var tart = aSupperOf(aDish("tart").step(aStep("bake").takes(30).bake(180).load(2)));
    var loaded = aRun("tart", "bake", "18:00", 30).oven("oven", 180)
        .hands(Act.LOAD, at("18:00"), at("18:02"), "Host");

    assertThat(aPlanFor(tart).with(loaded).heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("nobody takes it out"));
    assertThat(aPlanFor(tart).with(loaded.unload("Host")).heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(tart)
        .with(aRun("tart", "bake", "18:00", 30).oven("oven", 180).load("Host").unload("Host"))
        .heldAgainst(rule)).as("a minute of two")
        .singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
  }

  @Test
  void two_may_not_load_what_takes_one() {
    var tart = aSupperOf(aDish("tart").step(aStep("bake").takes(30).bake(180))).cooks(
        Events.aCook("Host", between("8:00", "22:00")), Events.aCook("Guest", between("8:00", "22:00")));

    assertThat(aPlanFor(tart).with(aRun("tart", "bake", "18:00", 30).oven("oven", 180)
        .hands(Act.LOAD, at("18:00"), at("18:01"), "Host", "Guest")
        .unload("Host")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void whoever_is_there_throughout_loads_and_unloads_by_the_way() {
    var crepes = aSupperOf(aDish("crepes").step(aStep("bake").takes(20).bake(180).hands()));

    assertThat(aPlanFor(crepes).with(aRun("crepes", "bake", "18:00", 20).oven("oven", 180).work("Host"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(crepes).with(
        aRun("crepes", "bake", "18:00", 20).oven("oven", 180).load("Host").work("Host"))
        .heldAgainst(rule)).as("one too many").hasSize(1);
  }

  @Test
  void what_waits_in_its_oven_is_unloaded_when_it_has_waited() {
    var ham = aSupperOf(aDish("ham").step(aStep("bake").takes(30).bake(180)));
    var baked = aRun("ham", "bake", "17:00", 30).oven("oven", 180).load("Host");

    assertThat(aPlanFor(ham).with(baked)
        .with(aStay("ham", "bake", "17:30").oven("19:00", "oven", 80).unload("Host"))
        .heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(ham).with(baked)
        .with(aStay("ham", "bake", "17:30").oven("19:00", "oven", 80))
        .heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.what()).isEqualTo("nobody takes it out"));
    assertThat(aPlanFor(ham).with(baked.unload("Host"))
        .with(
            aStay("ham", "bake", "17:30").oven("19:00", "oven", 80).unload("Host"))
        .heldAgainst(rule)).as("it does not come out at 17:30").hasSize(1);
  }

  @Test
  void of_two_trays_baked_together_the_one_that_does_not_wait_inside_comes_out_at_once() {
    var hams = aSupperOf(aDish("ham").batches(2).step(aStep("bake").takes(30).bake(180).together(2)));
    var baked = aRun("ham", "bake", "17:00", 30).batches(1, 2).oven("oven", 180).racks(0, 1).load("Host");

    assertThat(aPlanFor(hams).with(baked.unload("Host"))
        .with(aStay("ham", "bake", "17:30").batch(1).oven("19:00", "oven", 80).unload("Host"))
        .with(aStay("ham", "bake", "17:30").batch(2).counter("19:00"))
        .heldAgainst(rule)).isEmpty();
  }

  @Test
  void two_cooks_are_two_people() {
    var lift = aSupperOf(aDish("turkey").step(aStep("lift").hands(new Moment.Throughout(), 2, null))).cooks(
        Events.aCook("Host", between("8:00", "22:00")), Events.aCook("Guest", between("8:00", "22:00")));

    assertThat(
        aPlanFor(lift).with(aRun("turkey", "lift", "18:00", 10).work("Host", "Guest")).heldAgainst(rule))
        .isEmpty();
    assertThat(
        aPlanFor(lift).with(aRun("turkey", "lift", "18:00", 10).work("Host", "Host")).heldAgainst(rule))
        .singleElement()
        .satisfies(each -> {
          assertThat(each.off()).isEqualTo(1);
          assertThat(each.unit()).isEqualTo(Break.Unit.COOKS);
        });
  }

  @Test
  void carving_takes_one_who_can() {
    var carver = new Cook("Nan", List.of(between("8:00", "22:00")), List.of(), Set.of("carving"));
    var roast = aSupperOf(aDish("roast").step(aStep("carve").hands(new Moment.Throughout(), 1, "carving")))
        .cooks(Events.aCook("Host", between("8:00", "22:00")), carver);

    assertThat(aPlanFor(roast).with(aRun("roast", "carve", "18:00", 10).work("Nan")).heldAgainst(rule))
        .isEmpty();
    assertThat(aPlanFor(roast).with(aRun("roast", "carve", "18:00", 10).work("Host")).heldAgainst(rule))
        .extracting(Break::what)
        .containsExactly("none of [Host] is skilled in carving");
  }

  @Test
  void work_may_begin_and_end_with_the_hours_and_touch_the_break() {
    var cook = new Cook("Host", List.of(between("17:00", "18:00")), List.of(between("17:20", "17:30")),
        Set.of());

    assertThat(whiskWith(cook, "17:00")).isEmpty();
    assertThat(whiskWith(cook, "17:10")).isEmpty();
    assertThat(whiskWith(cook, "17:30")).isEmpty();
    assertThat(whiskWith(cook, "17:50")).isEmpty();
  }

  @Test
  void nobody_works_before_hours_after_hours_or_in_a_break() {
    var cook = new Cook("Host", List.of(between("17:00", "18:00")), List.of(between("17:20", "17:30")),
        Set.of());

    assertThat(whiskWith(cook, "16:59")).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(whiskWith(cook, "17:51")).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(1));
    assertThat(whiskWith(cook, "17:18")).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(8));
  }

  @Test
  void nobody_washes_up_in_a_break_either() {
    var cook = new Cook("Host", List.of(between("17:00", "18:00")), List.of(between("17:20", "17:30")),
        Set.of());
    var supper = aSupperOf(aDish("sauce").step(aStep("whisk"))).cooks(cook);

    assertThat(aPlanFor(supper).wash("pot", 1, "17:15", "Host").heldAgainst(rule)).isEmpty();
    assertThat(aPlanFor(supper).wash("pot", 1, "17:18", "Host").heldAgainst(rule)).singleElement()
        .satisfies(each -> assertThat(each.off()).isEqualTo(3));
  }

  @Test
  void a_cook_nobody_knows_is_no_hands() {
    assertThat(whisk(aRun("sauce", "whisk", "18:00", 10).work("Ghost"))).extracting(Break::what)
        .containsExactly("there is no cook \"Ghost\"");
  }

  @Test
  void hands_are_told_in_the_order_of_loading_work_and_unloading() {
    var tart = trays(20, false);

    assertThat(aPlanFor(tart).with(aRun("tart", "bake", "18:00", 30).oven("oven", 180)
        .load("Host")
        .unload("Host")
        .hands(Act.WORK, at("18:20"), at("18:22"), "Host")).heldAgainst(rule)).hasSize(1);
  }

  @Test
  void a_run_of_nothing_known_takes_no_hands_but_has_whom_it_names() {
    assertThat(whisk(aRun("sauce", "whisk", "18:00", 10).work("Host"),
        aRun("pie", "bake", "18:20", 10).work("Ghost")))
        .hasSize(1);
  }

  private List<Break> whisk(Runs... runs) {
    var plan = aPlanFor(aSupperOf(aDish("sauce").step(aStep("whisk").hands())));
    for (Runs run : runs) {
      plan.with(run);
    }
    return plan.heldAgainst(rule);
  }

  private List<Break> whiskWith(Cook cook, String from) {
    return aPlanFor(aSupperOf(aDish("sauce").step(aStep("whisk").hands())).cooks(cook))
        .with(aRun("sauce", "whisk", from, 10).work("Host"))
        .heldAgainst(rule);
  }

  /** Baked for thirty written minutes, and turned for two. */
  private static Events trays(int after, boolean sharp) {
    return aSupperOf(aDish("tart").step(
        aStep("bake").takes(30).upTo(60).bake(180).hands(new Moment.At(after, 2, sharp))));
  }

  private List<Break> tray(int booked, int after, String turned, boolean sharp) {
    return aPlanFor(trays(after, sharp))
        .with(aRun("tart", "bake", "18:00", booked).oven("oven", 180)
            .load("Host")
            .hands(Act.WORK, at(turned), at(turned) + 2, "Host")
            .hands(Act.UNLOAD, at("18:00") + booked - 1, at("18:00") + booked, "Host"))
        .heldAgainst(rule)
        .stream()
        .filter(each -> !each.what().startsWith("unload"))
        .toList();
  }
}
