package ovenloom.model.audit.score;

import static org.assertj.core.api.Assertions.assertThat;
import static ovenloom.model.audit.Dishes.aChore;
import static ovenloom.model.audit.Dishes.aDish;
import static ovenloom.model.audit.Events.aSupperOf;
import static ovenloom.model.audit.Plans.aPlanFor;
import static ovenloom.model.audit.Runs.aRun;
import static ovenloom.model.audit.Steps.aStep;
import static ovenloom.model.audit.Waits.aStay;

import java.util.Map;
import org.junit.jupiter.api.Test;
import ovenloom.model.audit.Dishes;
import ovenloom.model.audit.Plans;
import ovenloom.model.audit.Waits;
import ovenloom.model.heat.Kind;
import ovenloom.model.kitchen.BurnerSize;
import ovenloom.model.life.Warmness;
import ovenloom.model.measure.Length;
import ovenloom.model.menu.Arrives;
import ovenloom.model.menu.Matter;
import ovenloom.model.menu.Work;

/** Supper for ten is at 19:00; what is made here is two millimetres thin, so that every minute tells. */
class AtTheTableTest {

  @Test
  void food_that_goes_straight_to_the_table_loses_nothing() {
    assertThat(lost(pie("18:30"))).containsEntry("pie", 0L);
    assertThat(lost(pie("18:28"))).as("two minutes").containsEntry("pie", 0L);
  }

  @Test
  void each_tenth_of_a_kelvin_below_sixty_costs_one_for_each_of_ten_guests() {
    assertThat(lost(pie("18:14"))).containsEntry("pie", 10 * short16());
    assertThat(lost(pie("18:00"))).containsEntry("pie", 10 * tenths(pie("18:00"), "bake", 30));
  }

  /** By hand: 65 K above the room shrink by e for each 9.5 min, density x heat capacity x 1 mm / 6.9 W/(m2 K), so that 16 min leave 12.0 K: 28 short. */
  private static long short16() {
    assertThat(tenths(pie("18:14"), "bake", 16)).isBetween(275L, 285L);
    return tenths(pie("18:14"), "bake", 16);
  }

  @Test
  void what_is_to_be_warm_may_cool_to_forty() {
    var pie = aPlanFor(aSupperOf(thin("pie").arrives(Arrives.WARM).step(aStep("bake").takes(30).bake(180))))
        .with(aRun("pie", "bake", "18:14", 30).oven("oven", 180));

    assertThat(lost(pie)).containsEntry("pie", 10 * (short16() - 200));
  }

  @Test
  void a_roast_that_must_rest_twenty_minutes_loses_nothing_by_them() {
    var roast = aSupperOf(thin("roast")
        .step(aStep("bake").takes(30).bake(180))
        .step(aStep("rest").takes(20).upTo(40)));

    assertThat(lost(aPlanFor(roast)
        .with(aRun("roast", "bake", "18:00", 30).oven("oven", 180))
        .with(aRun("roast", "rest", "18:30", 20)))).as("30 less 20")
        .containsEntry("roast", 10 * tenths(aPlanFor(roast), "bake", 10));
    assertThat(lost(aPlanFor(roast)
        .with(aRun("roast", "bake", "17:50", 30).oven("oven", 180))
        .with(aRun("roast", "rest", "18:20", 40)))).as("40 less the written 20")
        .containsEntry("roast", 10 * tenths(aPlanFor(roast), "bake", 20));
  }

  @Test
  void waiting_in_the_cabinet_the_oven_or_on_a_low_burner_costs_nothing() {
    assertThat(lost(pie("17:00").with(out().shelf("19:00", "cabinet", "upper")))).containsEntry("pie", 0L);
    assertThat(lost(pie("17:00").with(out().oven("19:00", "oven", 80)))).containsEntry("pie", 0L);
    assertThat(lost(pie("17:00").with(out().ovenThatIsOff("19:00", "oven")))).containsEntry("pie", 0L);
    assertThat(lost(pie("17:00").with(out().burners("19:00", "small")))).containsEntry("pie", 0L);
    assertThat(lost(pie("17:00").with(out().shelf("19:00", "fridge", "top")))).containsEntry("pie",
        10 * tenths(pie("17:00"), "bake", 90));
    assertThat(lost(pie("17:00").with(out().counter("19:00")))).containsEntry("pie",
        10 * tenths(pie("17:00"), "bake", 90));
  }

  @Test
  void waiting_hot_counts_after_every_step_on_the_way() {
    var roast = aSupperOf(thin("roast")
        .step(aStep("bake").takes(30).bake(180))
        .step(aStep("rest").takes(20)));

    assertThat(lost(aPlanFor(roast)
        .with(aRun("roast", "bake", "17:00", 30).oven("oven", 180))
        .with(aRun("roast", "rest", "18:00", 20))
        .with(aStay("roast", "bake", "17:30").counter("18:00"))
        .with(aStay("roast", "rest", "18:20").shelf("19:00", "cabinet", "upper"))))
        .as("90 less the rest of 20, less 40 in the cabinet")
        .containsEntry("roast", 10 * tenths(aPlanFor(roast), "bake", 30));
  }

  @Test
  void what_is_served_is_hot_until_its_serving_begins() {
    var roast = aSupperOf(thin("roast")
        .step(aStep("bake").takes(30).bake(180))
        .step(aStep("carve").serve()));

    assertThat(lost(aPlanFor(roast)
        .with(aRun("roast", "bake", "18:25", 30).oven("oven", 180))
        .with(aRun("roast", "carve", "19:03", 5)))).as("8 minutes")
        .containsEntry("roast", 10 * tenths(aPlanFor(roast), "bake", 8));
    assertThat(lost(aPlanFor(roast)
        .with(aRun("roast", "bake", "18:20", 30).oven("oven", 180))
        .with(aRun("roast", "carve", "19:03", 5)))).as("13 minutes")
        .containsEntry("roast", 10 * tenths(aPlanFor(roast), "bake", 13));
  }

  @Test
  void the_last_heat_is_what_ends_last() {
    var stew = aSupperOf(thin("stew")
        .step(aStep("brown").burner(BurnerSize.SMALL))
        .step(aStep("chop").first())
        .step(aStep("braise").takes(30).bake(150).after("brown").after("chop")));

    assertThat(lost(aPlanFor(stew)
        .with(aRun("stew", "brown", "15:00", 10).burners("small"))
        .with(aRun("stew", "chop", "18:00", 10))
        .with(aRun("stew", "braise", "18:15", 30).oven("oven", 150))))
        .containsEntry("stew", 10 * tenths(aPlanFor(stew), "braise", 15));
  }

  @Test
  void each_batch_loses_for_its_own_portions() {
    var pies = aSupperOf(thin("pie").batches(2).step(aStep("bake").takes(30).bake(180)));

    assertThat(lost(aPlanFor(pies)
        .with(aRun("pie", "bake", "18:00", 30).batch(1).oven("oven", 180))
        .with(aRun("pie", "bake", "18:20", 30).batch(2).oven("oven", 180))))
        .as("30 and 10, each for five")
        .containsEntry("pie", 5 * (tenths(aPlanFor(pies), "bake", 30) + tenths(aPlanFor(pies), "bake", 10)));
  }

  @Test
  void what_is_cooked_once_counts_for_every_batch() {
    var soup = aSupperOf(thin("soup").batches(2)
        .waves()
        .step(aStep("simmer").once().burner(BurnerSize.SMALL))
        .step(aStep("ladle").takes(2)));

    assertThat(lost(aPlanFor(soup)
        .with(aRun("soup", "simmer", "18:30", 10).batches(1, 2).burners("small"))
        .with(aRun("soup", "ladle", "18:58", 2).batch(1))
        .with(aRun("soup", "ladle", "19:03", 2).batch(2))
        .with(aStay("soup", "simmer", "18:40").batches(1, 2).burners("19:03", "small"))
        .with(aStay("soup", "ladle", "19:00").batch(2).counter("19:05"))))
        .as("kept hot until each was ladled")
        .containsEntry("soup", 0L);
  }

  @Test
  void once_ladled_a_soup_is_no_longer_kept_hot_by_its_pot() {
    var soup = aSupperOf(thin("soup").batches(2)
        .step(aStep("simmer").once().burner(BurnerSize.SMALL))
        .step(aStep("ladle").takes(2)));

    assertThat(lost(aPlanFor(soup)
        .with(aRun("soup", "simmer", "18:30", 10).batches(1, 2).burners("small"))
        .with(aRun("soup", "ladle", "18:43", 2).batch(1))
        .with(aRun("soup", "ladle", "18:58", 2).batch(2))
        .with(aStay("soup", "simmer", "18:40").batches(1, 2).burners("18:58", "small"))
        .with(aStay("soup", "ladle", "18:45").batch(1).counter("19:00"))))
        .as("the first batch 20 less 3 in the pot, less 2 of ladling, for five; the second nothing")
        .containsEntry("soup", 5 * tenths(aPlanFor(soup), "simmer", 15));
  }

  @Test
  void what_joins_alongside_and_what_another_dish_takes_is_not_its_way() {
    var dinner = aSupperOf(
        thin("bird").step(aStep("roast").takes(60).bake(180)).step(aStep("rest").takes(20)),
        thin("gravy").step(aStep("make").takes(15).burner(BurnerSize.SMALL).uses("bird", "roast")));

    assertThat(lost(aPlanFor(dinner)
        .with(aRun("bird", "roast", "17:20", 60).oven("oven", 180))
        .with(aRun("bird", "rest", "18:20", 20))
        .with(aRun("gravy", "make", "18:45", 15).burners("small"))))
        .containsEntry("bird", 10 * tenths(aPlanFor(dinner), "roast", 20))
        .containsEntry("gravy", 0L);
  }

  @Test
  void what_never_was_hot_what_is_cool_by_then_and_chores_lose_nothing() {
    var supper = aSupperOf(
        aDish("ham").step(aStep("slice")),
        thin("tart").arrives(Arrives.COOL).step(aStep("bake").takes(30).bake(180)),
        aChore("towels").step(aStep("boil").burner(BurnerSize.LARGE)));

    assertThat(lost(aPlanFor(supper)
        .with(aRun("ham", "slice", "15:00", 10))
        .with(aRun("tart", "bake", "15:00", 30).oven("oven", 180))
        .with(aStay("tart", "bake", "15:30").counter("19:00"))
        .with(aRun("towels", "boil", "15:00", 10).burners("large")))).containsExactly(Map.entry("ham", 0L));
  }

  @Test
  void what_goes_into_another_dish_is_not_at_the_table() {
    var tart = aSupperOf(thin("caramel").step(aStep("boil").burner(BurnerSize.SMALL)),
        aDish("tart").arrives(Arrives.COOL).step(aStep("fill").uses("caramel", "boil")));

    assertThat(lost(aPlanFor(tart)
        .with(aRun("caramel", "boil", "12:00", 10).burners("small"))
        .with(aStay("caramel", "boil", "12:10").counter("18:00"))
        .with(aRun("tart", "fill", "18:00", 10)))).isEmpty();
  }

  @Test
  void what_comes_late_loses_nothing_here() {
    assertThat(lost(pie("19:30"))).containsEntry("pie", 0L);
  }

  private static Dishes thin(String name) {
    return aDish(name).matter(new Matter(Kind.TRAY_OF_PIECES, Length.mm(2), null, null, true));
  }

  private static long tenths(Plans plans, String step, int minutes) {
    Work work = Work.of(plans.plan().event());
    int index = work.steps()
        .stream()
        .filter(each -> each.step().name().equals(step))
        .findFirst()
        .orElseThrow()
        .index();
    return new Warmness(work).tenthsShort(index, minutes);
  }

  private static Plans pie(String in) {
    return aPlanFor(aSupperOf(thin("pie").step(aStep("bake").takes(30).bake(180))))
        .with(aRun("pie", "bake", in, 30).oven("oven", 180));
  }

  private static Waits out() {
    return aStay("pie", "bake", "17:30");
  }

  private static Map<String, Long> lost(Plans plans) {
    var plan = plans.plan();
    return Reckoning.of(plan.event(), plan).atTheTable();
  }
}
